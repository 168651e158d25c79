import { Component, type ReactNode } from 'react';

interface Props {
  readonly children: ReactNode;
  readonly instead: (say: string) => ReactNode;
}
/** A picture that cannot be drawn takes nothing else with it. */
export class Guard extends Component<Props, { readonly say: string | null }> {
  override state = { say: null as string | null };
  static getDerivedStateFromError(error: unknown) {
    return { say: error instanceof Error ? error.message : String(error) };
  }
  override render(): ReactNode {
    return this.state.say === null ? this.props.children : this.props.instead(this.state.say);
  }
}
