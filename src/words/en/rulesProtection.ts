/** Sentences of the rules about arc-fault and ground-fault protection: what cures, and where it is asked. */
export const protectionWords = {
  inBreaker: (v: { shared: boolean; gfci: boolean }) =>
    `A ${v.shared ? 'two-pole ' : ''}${v.gfci ? 'dual-function breaker (AFCI and GFCI)' : 'breaker with AFCI'}${
      v.shared ? ' listed for a shared neutral' : ''
    }: the plan and its price include it.`,
  atFirst: (v: { withSwitch: boolean }) =>
    `If the circuit has a receptacle, in place of AFCI in the breaker: an outlet branch-circuit AFCI at the first ${v.withSwitch ? 'receptacle or switch' : 'receptacle'} of the circuit, within reach.`,
  nearer: (v: { by: string; to: 'left' | 'right'; length: string }) =>
    `Hang the panel ${v.by} farther ${v.to} on its wall: along this way the extension is then ${v.length}. Plan it there; the space in front and other cables change too.`,

  gfciNew: (v: { label: string; basement: 'unfinished' | 'all'; kitchen: 'countertop' | 'all' }) =>
    `${v.label}: an outlet is added. This code year asks for GFCI protection of receptacles in bathrooms, garages, outdoors, crawl spaces, ${
      v.basement === 'all' ? 'every basement, finished or not' : 'unfinished basements only'
    }, ${v.kitchen === 'all' ? 'everywhere in kitchens' : 'at kitchen countertops'}, laundry areas, and within 6 ft of sinks, tubs and showers.`,
  gfciOut: (v: { label: string; known: boolean }) =>
    `${v.label}: ${v.known ? 'outlets outdoors' : 'perhaps outlets outdoors'}. A moved panel alone brings them no GFCI protection; what they have is kept.`,
  gfciOutLook: (v: { others: boolean }) =>
    `Look for a GFCI breaker or receptacle ahead of every receptacle outdoors${
      v.others ? ', and a GFCI breaker ahead of other outlets there, lighting outlets apart' : ''
    }, before and after.`,
  gfciReplaced: (v: { label: string }) =>
    `${v.label}: its receptacle is replaced, so it gets the GFCI protection that its place asks for.`,
  gfciReplacedLook: () => 'Test the button of the GFCI breaker after the receptacle is in.',
  gfciRecp: () =>
    'A receptacle replaced along with this work gets the GFCI protection that its place asks for today; receptacles left alone are not brought in.',
  gfciRecpLook: () => 'Write down every receptacle that is replaced, and its room.',
  afciRecp: () =>
    'A receptacle replaced along with this work gets the AFCI protection that its room asks for today; the 6 ft that excuse an extension do not excuse it.',
  afciRecpLook: () => 'Write down every receptacle that is replaced, and its room.',
} as const;
