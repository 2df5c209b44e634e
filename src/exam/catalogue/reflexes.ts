import { type ReflexKey, reflexKeys, reflexes as reflexRows } from '../../anatomy/reflexes.ts';
import { equivalent, wider } from './code-links.ts';
import type { CodeLink, Item } from './item.ts';

/** Terms for a lost, a reduced and a brisk reflex. */
const grades = (lost: CodeLink, reduced: CodeLink, brisk: CodeLink): Readonly<Record<string, CodeLink>> => ({
  '0': lost,
  trace: reduced,
  '1': reduced,
  '3': brisk,
  '4': brisk,
});

const hpoTerms: Readonly<Partial<Record<ReflexKey, Readonly<Record<string, CodeLink>>>>> = {
  jaw: grades(
    wider('HP:0012392', 'Jaw hyporeflexia'),
    equivalent('HP:0012392', 'Jaw hyporeflexia'),
    equivalent('HP:0033683', 'Jaw hyperreflexia'),
  ),
  biceps: grades(
    equivalent('HP:0033230', 'Biceps areflexia'),
    equivalent('HP:0033201', 'Biceps hyporeflexia'),
    equivalent('HP:0033205', 'Biceps hyperreflexia'),
  ),
  triceps: grades(
    equivalent('HP:0033228', 'Triceps areflexia'),
    equivalent('HP:0033200', 'Triceps hyporeflexia'),
    equivalent('HP:0033204', 'Triceps hyperreflexia'),
  ),
  brachioradialis: grades(
    equivalent('HP:0033229', 'Brachioradialis areflexia'),
    equivalent('HP:0033202', 'Brachioradialis hyporeflexia'),
    equivalent('HP:0033203', 'Brachioradialis hyperreflexia'),
  ),
  knee: grades(
    equivalent('HP:0006844', 'Absent patellar reflexes'),
    equivalent('HP:0011808', 'Decreased patellar reflex'),
    equivalent('HP:0007083', 'Hyperactive patellar reflex'),
  ),
  ankle: grades(
    equivalent('HP:0003438', 'Absent Achilles reflex'),
    equivalent('HP:0009072', 'Decreased Achilles reflex'),
    equivalent('HP:0033206', 'Hyperactive Achilles reflex'),
  ),
  'abdominal-upper': { '0': wider('HP:0031827', 'Absent abdominal reflex') },
  'abdominal-lower': { '0': wider('HP:0031827', 'Absent abdominal reflex') },
  cremasteric: { '0': equivalent('HP:0031829', 'Absent cremaster reflex') },
};

const generalTerms = grades(
  wider('HP:0001284', 'Areflexia'),
  wider('HP:0001265', 'Hyporeflexia'),
  wider('HP:0001347', 'Hyperreflexia'),
);

/** Every reflex of the reflex table. */
export const reflexes: readonly Item[] = reflexKeys.map((key) => {
  const reflex = reflexRows[key];
  const terms = hpoTerms[key] ?? (reflex.kind === 'stretch' ? generalTerms : undefined);
  return Object.freeze({
    section: 'reflexes',
    key,
    label: reflex.label,
    sides: reflex.paired ? 'paired' : 'midline',
    scale: reflex.kind === 'stretch' ? 'reflex-grade' : 'superficial-reflex',
    bodyPart: reflex.bodyPart,
    region: reflex.region,
    ...(terms && { hpoByValue: terms }),
    ...(key === 'knee' && { loinc: equivalent('32392-3', 'Deep tendon reflex of Patella') }),
    probe: { kind: 'reflex', reflex: key },
    source: reflex.source,
  } satisfies Item);
});
