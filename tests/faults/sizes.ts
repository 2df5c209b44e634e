/** How much of each fault a run meets; `npm test` keeps to the small numbers, `npm run faults` sets its own. */

const fromEnvironment = (name: string): number | undefined => {
  const text = process.env[name];
  return text === undefined ? undefined : Number(text);
};

export const sizes = {
  /** Times that the service is killed, on each engine. */
  kills: fromEnvironment('FAULTS_KILLS') ?? 2,
  /** Requests with a mutated, broken or random body. */
  bodies: fromEnvironment('FAULTS_BODIES') ?? 400,
  /** Times that the database goes away, and faults of the line to it. */
  outages: fromEnvironment('FAULTS_OUTAGES') ?? 1,
  lineFaults: fromEnvironment('FAULTS_LINE_FAULTS') ?? 4,
  /** Versions that several clients want to correct at the same time, on each engine. */
  races: fromEnvironment('FAULTS_RACES') ?? 2,
  /** Times that the power fails. */
  powerCuts: fromEnvironment('FAULTS_POWER_CUTS') ?? 1,
  /** Requests of clients that go away in the middle. */
  aborts: fromEnvironment('FAULTS_ABORTS') ?? 30,
} as const;

/** Whether the long run was asked for; only there is time judged, since the machine is then quiet. */
export const isFullRun = process.env.FAULTS_FULL === '1';

/** Always the same in `npm test`, so that it fails for a change and not by chance; `npm run faults` draws another each time. */
export const seed = fromEnvironment('FAULTS_SEED') ?? 20_261_126;

/** One line for the person who reads the run. */
export function tell(line: string): void {
  process.stdout.write(`${line} [seed ${seed}]\n`);
}
