import { ARTICLE_312, always, years } from './sectionsShort';

/** Where a panel may hang: working and dedicated space, height, rooms. */
export const PLACE_SECTIONS = {
  'WS-DEPTH': always('110.26(A)(1)'),
  'WS-WIDTH': always('110.26(A)(2)'),
  // the exception of an existing dwelling is cited where it decides: SPACE_SOURCES.headroomException
  'WS-HEIGHT': always('110.26(A)(3)'),
  'WS-6IN': always('110.26(A)(3)'),
  // 2020 asks only of large equipment, which no dwelling panel is
  'WS-DOOR': years(null, null, '110.26', '110.26', 'unverified'),
  'WS-FLOOR': years(null, null, '110.26(A)(6)', '110.26(A)(6)'),
  'WS-STORE': always('110.26(B)'),
  'WS-LIGHT': always('110.26(D)'),
  'WS-LIMITED': always('110.26(A)(4)', 'one source'),
  DEDICATED: always('110.26(E)(1)'),
  HANDLE: always('240.24(A), 404.8(A)'),
  DAMAGE: always('240.24(C)', 'memory'),
  ACCESS: always('240.24(A), (B)'),
  CLOSET: always('240.24(D)'),
  BATH: always('240.24(E)'),
  STAIRS: always('240.24(F)'),
  DAMP: years('312.2', '312.2', '312.2', ARTICLE_312),
  FLUSH: years('312.3', '312.3', '312.3', ARTICLE_312),
  ORIENT: years('240.33, 240.81', '240.33, 240.81, 408.43', '240.33, 240.81, 408.43', '240.33, 240.81, 408.43'),
  'SVC-LOC': years('230.70(A)(1), (2)', '230.70(A)(1), (2)', '230.70(A)(1), (2)', '230.70(A)(1)'),
} as const;
