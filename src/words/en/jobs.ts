/** What the list of jobs, versions, photos and the keeping of all of it say. */
const MB = 1_000_000;
const size = (bytes: number): string => {
  if (bytes >= 1000 * MB) return `${(bytes / (1000 * MB)).toFixed(1)} GB`;
  return `${bytes < 10 * MB ? (bytes / MB).toFixed(1) : Math.round(bytes / MB)} MB`;
};

export const jobsWords = {
  find: 'Find',
  places: {
    jobs: (v: { count: number }) => `Jobs (${v.count})`,
    archive: (v: { count: number }) => `Archive (${v.count})`,
    bin: (v: { count: number }) => `Bin (${v.count})`,
  },
  placesTitle: 'Where to look',
  nothingHere: 'Nothing here.',
  nothingFound: (v: { typed: string }) => `No job here has “${v.typed}” in its title, place or customer.`,
  more: 'More',
  duplicate: 'Duplicate',
  toArchive: 'Archive',
  toBin: 'To the bin',
  back: 'Back to the jobs',
  restore: 'Restore',
  forGood: 'Delete for good',
  sure: 'Really delete for good?',

  versionsTitle: 'Versions',
  versionsSay:
    'The state a job was opened in is put by, then one every ten minutes of work; the latest ten of these stay. Those you name stay all.',
  versionName: 'Name this state',
  putBy: 'Put by',
  noVersions: 'None yet.',
  versionNot: (v: { say: string }) => `The last version could not be put by. (${v.say})`,
  ownVersion: 'put by while working',
  goBack: 'Go back to it',

  withoutPhotos: 'Save without photos',
  drop: 'Let go to open the job file',

  promised: 'This browser has promised to keep jobs until you remove them.',
  notPromised:
    'This browser has not promised to keep jobs: when room gets short, it may clear them. Save job files for good.',
  cannotPromise: 'Whether this browser keeps jobs for good cannot be told. Save job files for good.',
  used: (v: { used: number; of: number }) => `${size(v.used)} used of about ${size(v.of)} it allows.`,

  elsewhere:
    'This job is open in another tab, and follows what is changed there. Change something here, and it goes on as a job of its own.',
  cleared:
    'The browser had cleared away what it kept. The open job was kept anew; other jobs that were kept here only are gone. Save the job file for good.',
  failed: {
    full: 'The browser has no room left for the job. Save the job file; then make room by deleting jobs from the bin for good.',
    newer:
      'A newer version of the program has been opened in another tab, and this tab can no longer keep the job. Save the job file, or reload: the last change is carried over.',
    blocked:
      'A tab with an older version of the program holds what is kept. Close the other tabs of this program, then try again.',
    other: 'The browser could not keep the job. Save the job file before you leave.',
  },

  aboutTitle: 'This program',
  licenses: 'Licenses of what it is made of',
  report: 'Something is wrong: save an error report',
  reportedByHand: 'no error was caught; reported by hand',
} as const;
