import { type Investigation, investigations } from '../exam/catalogue/investigations.ts';
import type { Coding } from '../kernel/coding.ts';
import { systems } from '../terminology/systems.ts';
import type { Assessment, ProposedTest, WorkupItem } from './assessment.ts';

/**
 * What goes out as a proposal, and what was suggested and stays behind. The examiner has the last word: what was asked for
 * is proposed though it was not suggested, with what speaks against it as part of the reason.
 * @param requests  keys of the investigations that the examiner wants; all that is suggested when undefined
 * @param suggested most pressing first; what was asked for besides comes after them, in the order of the table
 * @param against   what speaks against an investigation here, in words
 */
export function chooseTests(
  requests: readonly string[] | undefined,
  suggested: readonly WorkupItem[],
  against: (test: Investigation) => readonly string[],
): Pick<Assessment, 'proposed' | 'notChosen'> {
  if (requests === undefined) {
    return { proposed: suggested.map((item) => ({ ...item, isChosen: false })), notChosen: [] };
  }
  const wanted = new Set(requests);
  const known = new Set(suggested.map(({ key }) => key));
  const besides = investigations.filter(({ key }) => wanted.has(key) && !known.has(key));
  return {
    proposed: [
      ...suggested.filter(({ key }) => wanted.has(key)).map((item) => ({ ...item, isChosen: true })),
      ...besides.map((test) => askedFor(test, against(test))),
    ],
    notChosen: suggested.filter(({ key }) => !wanted.has(key)),
  };
}

/** How soon is not known of what only the examiner asks for, so it is routine until a clinician says otherwise. */
function askedFor(test: Investigation, against: readonly string[]): ProposedTest {
  const asked = 'the examiner asked for it; the service did not suggest it';
  return {
    key: test.key,
    label: test.label,
    code: investigationCoding(test),
    priority: 'routine',
    because: against.length === 0 ? asked : `${asked}, since ${against.join('; ')}`,
    isChosen: true,
  };
}

/** LOINC where a code says the same, else the local code. */
export function investigationCoding(test: Investigation): Coding {
  return test.loinc === undefined
    ? { system: systems.investigation, code: test.key, display: test.label }
    : { system: systems.loinc, code: test.loinc.code, display: test.loinc.display };
}
