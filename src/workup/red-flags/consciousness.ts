/** Signs of a lowered wakefulness. */
export const reducedConsciousness = [
  'higher-function/drowsiness',
  'higher-function/coma',
  'higher-function/stupor',
  'higher-function/fluctuating-consciousness',
];

/** The same, or a mind that is awake and not clear. */
export const clouded = [...reducedConsciousness, 'higher-function/confusion', 'higher-function/disorientation'];
