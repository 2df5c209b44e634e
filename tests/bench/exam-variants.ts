import { type ExamBody, exampleExam, exampleNames } from '../support/example-exam.ts';

const grades = ['0', '1', '2', '3', '4-', '4', '4+', '5'];
const reflexGrades = ['0', 'trace', '1', '2', '3', '4'];

/**
 * Different exams made from the examples by invented variation of age, tempo, power and reflexes, so that no cache and
 * no branch predictor sees the same exam all the time. The same seed gives the same exams.
 */
export function examVariants(count: number, seed = 20_260_314): ExamBody[] {
  const random = mulberry32(seed);
  /** The grade itself or, three times in ten, a neighbour: as far as two examiners differ. */
  const varied = (values: readonly string[], value: unknown) => {
    const at = values.indexOf(String(value));
    const step = random() < 0.3 ? (random() < 0.5 ? -1 : 1) : 0;
    return values[at + step] ?? String(value);
  };
  return Array.from({ length: count }, (_, n) => {
    const exam = exampleExam({}, exampleNames[n % exampleNames.length]);
    exam.identifier = { system: 'https://bench.example/exams', value: `bench-${n}` };
    exam.person = { ...exam.person, ageYears: 20 + Math.floor(random() * 70) };
    for (const finding of exam.findings?.power ?? []) {
      if ('grade' in finding) finding.grade = varied(grades, finding.grade);
    }
    for (const finding of exam.findings?.reflexes ?? []) {
      if ('grade' in finding && finding.reinforced === undefined) finding.grade = varied(reflexGrades, finding.grade);
    }
    return exam;
  });
}

/** Small generator of numbers from 0 to 1 that can be seeded. Source: mulberry32, public domain, recalled. */
function mulberry32(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4_294_967_296;
  };
}
