import { describe, expect, it } from 'vitest';
import { itemById, items } from '../../src/exam/catalogue/catalogue.ts';
import { resultRows } from '../../src/exam/catalogue/results.ts';
import { describeFinding, describeItem, quantityWords } from '../../src/exam/describe.ts';
import { requestWith, requestWithFindings } from './support/exam-request.ts';
import { read } from './support/read.ts';

function wordsOf(section: string, entry: unknown): readonly string[] {
  return read(requestWithFindings({ [section]: [entry] })).findings.map(describeFinding);
}

const pinprick = { modality: 'pinprick', result: 'reduced', side: 'left' };

describe('a finding in words', () => {
  it.each<[string, object, string]>([
    ['power', { movement: 'ankle-dorsiflexion', side: 'left', grade: '3' }, 'left ankle dorsiflexion 3/5'],
    [
      'power',
      { movement: 'ankle-dorsiflexion', side: 'left', notTested: 'pain' },
      'left ankle dorsiflexion not tested (pain)',
    ],
    [
      'reflexes',
      { reflex: 'ankle', side: 'left', grade: '0', reinforced: true },
      'left ankle reflex absent with reinforcement',
    ],
    ['reflexes', { reflex: 'knee', side: 'right', grade: '3' }, 'right knee reflex brisk'],
    ['plantars', { side: 'left', response: 'extensor' }, 'left plantar response extensor'],
    ['tone', { site: 'lower-limb', side: 'left', tone: 'spastic' }, 'spastic tone of the left lower limb'],
    ['clonus', { site: 'ankle', side: 'right', beats: 6 }, 'right ankle clonus, 6 beats'],
    ['clonus', { site: 'ankle', side: 'right', beats: 0 }, 'no right ankle clonus'],
    ['sensation', { ...pinprick, site: 'dorsum-of-foot' }, 'pinprick reduced at the top of the left foot'],
    [
      'sensation',
      { ...pinprick, dermatome: 'L5', modality: 'vibration', result: 'absent' },
      'vibration absent in the left L5 dermatome',
    ],
    [
      'sensation',
      { ...pinprick, territory: 'lateral-femoral-cutaneous-nerve' },
      'pinprick reduced in the left lateral femoral cutaneous nerve territory',
    ],
    [
      'sensation',
      { ...pinprick, levelBelow: 'T10', modality: 'joint-position' },
      'joint position sense reduced below T10 on the left',
    ],
    ['coordination', { test: 'heel-shin', side: 'right', result: 'impaired' }, 'right heel-shin test impaired'],
    ['cranialNerves', { sign: 'ptosis', side: 'right', present: true }, 'ptosis on the right'],
    ['cranialNerves', { sign: 'ptosis', side: 'right', present: false }, 'no ptosis on the right'],
    [
      'cranialNerves',
      { sign: 'tongue-deviation', side: 'left', present: false },
      'tongue does not deviate to the left side',
    ],
    [
      'cranialNerves',
      { sign: 'homonymous-hemianopia', side: 'left', present: true },
      'homonymous hemianopia on the left',
    ],
    ['autonomic', { sign: 'breathlessness-at-rest', present: false }, 'not breathless at rest'],
    ['gait', { sign: 'romberg', present: true }, 'Romberg sign'],
    ['gait', { sign: 'unable-to-walk', present: false }, 'able to walk'],
    ['gait', { sign: 'heel-walking', side: 'left', result: 'unable' }, 'walking on the heels not possible on the left'],
    ['specialTests', { test: 'neck-stiffness', result: 'positive' }, 'neck stiffness'],
    [
      'specialTests',
      { test: 'dix-hallpike', side: 'right', result: 'positive' },
      'positive Dix-Hallpike manoeuvre, the right ear down',
    ],
    ['specialTests', { test: 'neck-stiffness', result: 'negative' }, 'no neck stiffness'],
    ['specialTests', { test: 'counting-fatigability', result: 'negative' }, 'voice does not tire on counting aloud'],
    ['inspection', { sign: 'wasting', site: 'calf', side: 'left', present: true }, 'muscle wasting at the left calf'],
    [
      'specialTests',
      { test: 'straight-leg-raise', side: 'left', result: 'negative' },
      'straight-leg raise negative on the left',
    ],
  ])('%s: %j', (section, entry, words) => {
    expect(wordsOf(section, entry)).toEqual([words]);
  });

  it.each([
    ['power/hip-abduction', 'left', 'hip abduction on the left'],
    ['cranial-nerves/anisocoria', 'right', 'unequal pupils, the right one abnormal'],
    ['gait/romberg', 'midline', 'Romberg sign'],
  ] as const)('names %s, still to be examined, with its side', (id, side, words) => {
    const item = itemById.get(id);
    expect(item && describeItem(item, side)).toBe(words);
  });

  it('says where a region was declared normal', () => {
    const exam = read(
      requestWith({ otherwiseNormal: [{ section: 'sensation', region: 'lower-limbs', side: 'left' }] }),
    );
    expect(exam.findings.map(describeFinding)).toContain('vibration normal in the left lower limb');
  });

  it('reads well for every item: side said, no capital but of a name, no explanation left over', () => {
    const sections = [...new Set(items.map((item) => item.section))];
    const { findings } = read(requestWith({ otherwiseNormal: sections.map((section) => ({ section })) }));
    for (const finding of findings) {
      for (const value of [finding.value, finding.item.scale === 'presence' ? 'present' : finding.value]) {
        const words = describeFinding({ ...finding, value });
        expect(words).not.toMatch(/undefined|null|[(:.]|\bthis\b|midline side|\s{2}|^\s|\s$/);
        if (finding.side !== 'midline') expect(words).toContain(finding.side);
      }
    }
  });

  it('shows no sign of UCUM for any measured result', () => {
    const measured = resultRows.flatMap((row) => (row.kind === 'quantity' ? [quantityWords(7, row.unit)] : []));
    expect(measured.filter((words) => /[[\]{}*]|^7 1$/.test(words))).toEqual([]);
  });
});
