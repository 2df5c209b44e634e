/** What takes the far end of the longest axons in many of those who have it, at any age. Preston and Shapiro, toxic and metabolic neuropathies (recalled). */
export const harmsLongAxons = [
  ...['diabetes-mellitus', 'alcohol-excess', 'chronic-kidney-disease', 'hiv-infection', 'organic-solvents', 'arsenic'],
  ...['paclitaxel', 'docetaxel', 'vincristine', 'oxaliplatin', 'cisplatin', 'bortezomib', 'thalidomide'],
  ...['metronidazole', 'linezolid', 'isoniazid', 'nitrofurantoin'],
] as const;
