import type { Plan, Result } from '../facts/result';

/** What the planner has said about one state of the job so far. */
export interface Answer {
  readonly revision: number;
  /** In the order of the result; while the planner is at work only the first ones. */
  readonly plans: readonly Plan[];
  /** The whole result, once the advice stands. */
  readonly result: Result | null;
}

/** The latest answers by revision, the oldest dropped first. */
export class AnswerShelf {
  readonly #answers = new Map<number, Answer>();
  readonly #most: number;
  constructor(most: number) {
    this.#most = most;
  }
  get(revision: number): Answer | undefined {
    return this.#answers.get(revision);
  }
  keep(answer: Answer): void {
    this.#answers.delete(answer.revision);
    this.#answers.set(answer.revision, answer);
    if (this.#answers.size > this.#most) this.#answers.delete(this.#answers.keys().next().value!);
  }
}
