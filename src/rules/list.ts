import { acMc } from './cables/acMc.rule';
import { alCu } from './cables/alCu.rule';
import { bigBox } from './cables/bigBox.rule';
import { boxFill } from './cables/boxFill.rule';
import { cabFill } from './cables/cabFill.rule';
import { cableBend } from './cables/cableBend.rule';
import { duct } from './cables/duct.rule';
import { fireStop } from './cables/fireStop.rule';
import { joistHole } from './cables/joistHole.rule';
import { knobTube } from './cables/knobTube.rule';
import { nmBore } from './cables/nmBore.rule';
import { nmBundle } from './cables/nmBundle.rule';
import { nmJoist } from './cables/nmJoist.rule';
import { nmPar } from './cables/nmPar.rule';
import { nmPrint } from './cables/nmPrint.rule';
import { nmSup } from './cables/nmSup.rule';
import { nmUse } from './cables/nmUse.rule';
import { oldCan } from './cables/oldCan.rule';
import { spliceBox } from './cables/spliceBox.rule';
import { surface } from './cables/surface.rule';
import { tenPercent } from './cables/tenPercent.rule';
import { afciArea } from './circuits/afciArea.rule';
import { afciExt } from './circuits/afciExt.rule';
import { afciExt17 } from './circuits/afciExt17.rule';
import { afciLocal } from './circuits/afciLocal.rule';
import { carryOver } from './circuits/carryOver.rule';
import { dryerRange } from './circuits/dryerRange.rule';
import { gfciNew } from './circuits/gfciNew.rule';
import { gfciOut } from './circuits/gfciOut.rule';
import { gfciRecp } from './circuits/gfciRecp.rule';
import { group } from './circuits/group.rule';
import { mwbc } from './circuits/mwbc.rule';
import { oldThreeWire } from './circuits/oldThreeWire.rule';
import { ungrounded } from './circuits/ungrounded.rule';
import { fdrEgc } from './feeder/fdrEgc.rule';
import { fdrFourWire } from './feeder/fdrFourWire.rule';
import { fdrNeutral } from './feeder/fdrNeutral.rule';
import { fdrSer } from './feeder/fdrSer.rule';
import { fdrSize } from './feeder/fdrSize.rule';
import { fdrTap } from './feeder/fdrTap.rule';
import { fdrTwoAl } from './feeder/fdrTwoAl.rule';
import { load } from './feeder/load.rule';
import { svcCond } from './feeder/svcCond.rule';
import { emdisc } from './panel/emdisc.rule';
import { groundBond } from './panel/groundBond.rule';
import { hang } from './panel/hang.rule';
import { knockouts } from './panel/knockouts.rule';
import { neutralBar } from './panel/neutralBar.rule';
import { ocpdPanel } from './panel/ocpdPanel.rule';
import { orient } from './panel/orient.rule';
import { reminders } from './panel/reminders';
import { sources } from './panel/sources.rule';
import { spaces } from './panel/spaces.rule';
import { spdFeeder } from './panel/spdFeeder.rule';
import { spdService } from './panel/spdService.rule';
import { svcGround } from './panel/svcGround.rule';
import { svcLoc } from './panel/svcLoc.rule';
import { svcSix } from './panel/svcSix.rule';
import { svcToSub } from './panel/svcToSub.rule';
import { temp } from './panel/temp.rule';
import { wireBend } from './panel/wireBend.rule';
import { bath } from './place/bath.rule';
import { closet } from './place/closet.rule';
import { damp } from './place/damp.rule';
import { dedicated } from './place/dedicated.rule';
import { flush } from './place/flush.rule';
import { handle } from './place/handle.rule';
import { stairs } from './place/stairs.rule';
import { wsDepth } from './place/wsDepth.rule';
import { wsDoor } from './place/wsDoor.rule';
import { wsFloor } from './place/wsFloor.rule';
import { wsHeight } from './place/wsHeight.rule';
import { wsLight } from './place/wsLight.rule';
import { wsLimited } from './place/wsLimited.rule';
import { wsSixIn } from './place/wsSixIn.rule';
import { wsStore } from './place/wsStore.rule';
import { wsWidth } from './place/wsWidth.rule';
import type { Rule } from './rule';

/** Every rule the program checks, one file a rule; reminders share one. */
export const RULES: readonly Rule[] = [
  acMc,
  alCu,
  boxFill,
  cabFill,
  cableBend,
  duct,
  joistHole,
  knobTube,
  nmBore,
  nmBundle,
  nmJoist,
  nmPrint,
  nmSup,
  nmUse,
  oldCan,
  spliceBox,
  afciArea,
  afciExt,
  afciExt17,
  afciLocal,
  carryOver,
  dryerRange,
  gfciNew,
  group,
  mwbc,
  oldThreeWire,
  ungrounded,
  fdrEgc,
  fdrFourWire,
  fdrSer,
  fdrSize,
  fdrTwoAl,
  load,
  emdisc,
  groundBond,
  hang,
  knockouts,
  neutralBar,
  ocpdPanel,
  orient,
  sources,
  spaces,
  spdFeeder,
  spdService,
  svcLoc,
  svcToSub,
  temp,
  bath,
  closet,
  damp,
  dedicated,
  flush,
  handle,
  stairs,
  wsDepth,
  wsDoor,
  wsFloor,
  wsHeight,
  wsLight,
  wsSixIn,
  wsStore,
  wsWidth,
  svcCond,
  fdrTap,
  fdrNeutral,
  svcSix,
  svcGround,
  gfciOut,
  gfciRecp,
  wsLimited,
  tenPercent,
  nmPar,
  bigBox,
  wireBend,
  surface,
  fireStop,
  ...reminders,
];
