import type { RuleId } from '../../standards/sections';
import { panelWords as say } from '../../words/en/rulesPanel';
import { protectionWords as protection } from '../../words/en/rulesProtection';
import { serviceWords as service } from '../../words/en/rulesService';
import { doesNotApply, type FactsInYear, type Rule, reminder } from '../rule';
import { newIsService, theNewPanel } from './serviceReading';

const JOB = 'job';
const theJob = () => [JOB];

/** A duty of the day: always said, never judged. `when` false = nothing to say. */
const duty = (
  id: RuleId,
  text: () => string,
  look: () => string,
  subjects: Rule['subjects'] = theNewPanel,
  when: (facts: FactsInYear) => boolean = () => true,
): Rule => ({
  id,
  subjects,
  check: (facts) => (when(facts) ? reminder(text(), look()) : doesNotApply()),
});

/** A main or perhaps: a reminder too many does no harm. */
const mayHaveMain = ({ option }: FactsInYear) => option.enclosure.mainAmps !== null;
const hasBoxes = (facts: FactsInYear) => facts.boxes.length > 0;

/** Barriers belong to service equipment: the new disconnect, or the panel that is it or may be; a panel behind one is a subpanel. */
const barrier: Rule = {
  id: 'BARRIER',
  subjects: (facts) => [...theNewPanel(facts), JOB],
  check: (facts, subject) => {
    const disconnect = facts.option.serviceDisconnect !== null;
    if (subject === JOB) return disconnect ? reminder(say.barrierDisconnect(), say.barrierLook()) : doesNotApply();
    return !disconnect && newIsService(facts) !== false ? reminder(say.barrier(), say.barrierLook()) : doesNotApply();
  },
};

export const reminders: readonly Rule[] = [
  duty('DIR', say.dir, say.dirLook),
  duty('TORQUE', say.torque, say.torqueLook),
  duty('SAFE', say.safe, say.safeLook, theJob),
  duty('OPENINGS', say.openings, say.openingsLook),
  duty('SCCR', say.sccr, say.sccrLook),
  duty('BREAKER-LIST', say.breakerList, say.breakerListLook),
  duty('DAMAGE', say.damage, say.damageLook),
  duty('ACCESS', say.access, say.accessLook),
  duty('CABLE-SEC', say.cableSec, say.cableSecLook),
  duty('SHEATH', say.sheath, say.sheathLook),
  duty('FREE-WIRE', say.freeWire, say.freeWireLook, theJob, hasBoxes),
  duty('EGC', say.egcJoint, say.egcJointLook, theJob, hasBoxes),
  duty('AFCI-RECP', protection.afciRecp, protection.afciRecpLook, theJob),
  duty('BACKFED', service.backfed, service.backfedLook, theNewPanel, mayHaveMain),
  barrier,
];
