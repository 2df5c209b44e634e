/** What clinicians say and write for words of the catalogue: beginnings of the words to look for. Common practice. */
export const tradeWords: Readonly<Record<string, readonly string[]>> = {
  ach: ['acetylcholine'],
  achr: ['acetylcholine'],
  bp: ['systolic pressure', 'hypertension'],
  cts: ['carpal tunnel'],
  dizziness: ['vertigo', 'light-headedness'],
  etoh: ['alcohol'],
  incontinence: ['disturbance of the bladder', 'disturbance of the bowel'],
  lp: ['cerebrospinal', 'lumbar puncture'],
  mg: ['myasthenia', 'magnesium'],
  paresthesia: ['pins and needles'],
  sah: ['sudden headache'],
  ssri: ['antidepressant'],
  tnf: ['tumour necrosis'],
};
