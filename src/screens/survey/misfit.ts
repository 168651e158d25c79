import { edges, insideOrOn, pointToSegment, segmentsCross, strictlyInside } from '../../geometry/polygon';
import type { Obstacle, Site } from '../../job/schema';
import { boxOutline, roomOutline } from '../../job/site';
import { surveyWords as say } from '../../words/en/survey';

/** What reaches no farther into a wall than this is measured inexactly, not misplaced. Our own measure, inches. */
const SLACK_IN = 1;

/** What a person should look at again in a thing's place and size; null where it stands in the room. It is kept as typed. */
export const misfitOf = (site: Site, { corner, size, turn }: Obstacle): string | null => {
  const room = roomOutline(site);
  const thing = boxOutline(corner, size.width, size.depth, turn);
  const outside = thing.filter(
    (p) => !insideOrOn(p, room) && edges(room).every(([a, b]) => pointToSegment(p, a, b) > SLACK_IN),
  );
  // a corner of the room that juts into it, with all its own corners in the room
  const juts = room.some(
    (p) => strictlyInside(p, thing) && edges(thing).every(([a, b]) => pointToSegment(p, a, b) > SLACK_IN),
  );
  if (outside.length === 0 && !juts) return null;
  return outside.length === thing.length && !room.some((p) => strictlyInside(p, thing)) && !crosses(room, thing)
    ? say.outsideRoom
    : say.reachesOut;
};

/** True where a wall of the room runs through the thing. */
const crosses = (room: ReturnType<typeof roomOutline>, thing: ReturnType<typeof roomOutline>): boolean =>
  edges(room).some(([a, b]) => edges(thing).some(([c, d]) => segmentsCross(a, b, c, d)));
