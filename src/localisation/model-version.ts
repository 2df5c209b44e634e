/** Version of the clinical model: package version and a fingerprint of every table and weight. Written by `npm run generate`. */
export const modelVersion = '0.1.0+4832f9dc6e0a';
