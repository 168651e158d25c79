import { bath } from './place/bath.rule';
import { closet } from './place/closet.rule';
import { damp } from './place/damp.rule';
import { dedicated } from './place/dedicated.rule';
import { flush } from './place/flush.rule';
import { handle } from './place/handle.rule';
import { stairs } from './place/stairs.rule';
import { wsDepth } from './place/wsDepth.rule';
import { wsDoor } from './place/wsDoor.rule';
import { wsHeight } from './place/wsHeight.rule';
import { wsSixIn } from './place/wsSixIn.rule';
import { wsWidth } from './place/wsWidth.rule';
import type { Rule } from './rule';

/** Rules that look at where the panel hangs and what is around it, before any cable has a way. */
export const PLACE_RULES: readonly Rule[] = [
  bath,
  closet,
  damp,
  dedicated,
  flush,
  handle,
  stairs,
  wsDepth,
  wsDoor,
  wsHeight,
  wsSixIn,
  wsWidth,
];
