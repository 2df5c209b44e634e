/**
 * Other names that clinicians use for what the catalogue calls otherwise. They lead to a suggestion in a fault and are
 * never taken as keys: one thing has one key. Of several keys the first that can stand in the place is meant.
 */
export const keysBySynonym: ReadonlyMap<string, readonly string[]> = new Map([
  ['achilles', ['ankle']],
  ['adiadochokinesia', ['rapid-alternating-movements']],
  ['babinski', ['extensor', 'plantar-response']],
  ['bells-palsy', ['facial-weakness']],
  ['broca-aphasia', ['expressive-aphasia']],
  ['cogwheel', ['rigid']],
  ['cogwheel-rigidity', ['rigid']],
  ['double-vision', ['diplopia']],
  ['downgoing', ['flexor']],
  ['dysdiadochokinesia', ['rapid-alternating-movements']],
  ['dysmetria', ['finger-nose']],
  ['facial-droop', ['facial-weakness']],
  ['facial-palsy', ['facial-weakness']],
  ['finger-to-nose', ['finger-nose']],
  ['heel-knee-shin', ['heel-shin']],
  ['heel-to-shin', ['heel-shin']],
  ['hypertonia', ['spastic']],
  ['hypotonia', ['reduced']],
  ['lasegue', ['straight-leg-raise']],
  ['lead-pipe-rigidity', ['rigid']],
  ['masseter', ['jaw']],
  ['myopathic-gait', ['waddling']],
  ['pain', ['pinprick']],
  ['parkinsonian-gait', ['shuffling']],
  ['patella', ['knee']],
  ['patellar', ['knee']],
  ['peroneal-nerve', ['common-fibular-nerve', 'tinel-fibular-neck']],
  ['position-sense', ['joint-position']],
  ['proprioception', ['joint-position']],
  ['quadriceps', ['knee', 'knee-extension']],
  ['rapd', ['relative-afferent-pupillary-defect']],
  ['slr', ['straight-leg-raise']],
  ['steppage', ['high-stepping']],
  ['steppage-gait', ['high-stepping']],
  ['supinator', ['brachioradialis', 'forearm-supination']],
  ['touch', ['light-touch']],
  ['upgoing', ['extensor', 'plantar-response']],
  ['wernicke-aphasia', ['receptive-aphasia']],
]);

/** Words inside longer names for which the keys have another word. */
export const wordsBySynonym: ReadonlyMap<string, string> = new Map([
  ['atrophy', 'wasting'],
  ['hallux', 'great-toe'],
  ['peroneal', 'fibular'],
]);

/** Words that say what kind of thing a key names; with or without them it is the same thing. */
export const wordsOfKind: ReadonlySet<string> = new Set([
  'gait',
  'jerk',
  'nerve',
  'reflex',
  'response',
  'sensation',
  'sense',
  'sign',
  'test',
  'to',
  'walking',
]);
