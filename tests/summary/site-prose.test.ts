import { describe, expect, it } from 'vitest';
import type { Evidence, Localisation, RankedLocalisation } from '../../src/localisation/localisation.ts';
import { fullest } from '../../src/summary/detail.ts';
import { siteSentences } from '../../src/summary/site-prose.ts';

const evidence = (findingId: string, text: string, weight: number): Evidence => ({
  finding: `/findings/${findingId.split('/')[0]}/0`,
  side: 'midline',
  text,
  weight,
  because: `of ${findingId}`,
  abnormal: true,
  findingId,
});

const site = (
  parts: Pick<RankedLocalisation, 'site' | 'label' | 'kind' | 'probability'> & Partial<RankedLocalisation>,
): RankedLocalisation => ({
  side: null,
  level: null,
  levelRange: null,
  code: { system: '', code: '', display: '' },
  fit: 1,
  supporting: [],
  against: [],
  unexplained: [],
  ...parts,
});

const answer = (
  conclusion: Localisation['conclusion'],
  localisations: RankedLocalisation[],
  manner: { readonly ofCause?: ReadonlySet<string> } = {},
): string =>
  siteSentences(
    {
      localisations,
      pattern: { key: '', label: 'Polyneuropathy', motorNeuron: 'none', symmetry: 'none', modalities: [] },
      conclusion,
      nextExamination: [],
    },
    { isExamined: true, ...fullest, ...manner },
  ).join(' ');

describe('why a site is named', () => {
  const supporting = [
    evidence('special-tests/hoffmann|left', 'left Hoffmann sign positive', 3),
    evidence('reflexes/knee|left', 'left knee reflex brisk', 3),
    evidence('power/wrist-extension|left', 'left wrist extension 3/5', 2),
  ];

  it('gives no sign of the descending tracts as a reason for nerves', () => {
    const nerves = site({ site: 'x', label: 'Polyneuropathy', kind: 'polyneuropathy', probability: 0.6, supporting });
    expect(answer('diffuse-process', [nerves])).toMatch(/chiefly because of left wrist extension 3\/5 \(/);
  });

  it('gives it for the cord', () => {
    const cord = site({ site: 'x', label: 'Spinal cord', kind: 'cord', probability: 0.6, supporting });
    expect(answer('single-site', [cord])).toContain('Hoffmann');
  });
});

describe('what was told', () => {
  const told: Evidence = { ...evidence('history/symptoms|back-pain', 'back pain', 3), finding: '/history/symptoms/0' };
  const cord = (weight: number) =>
    site({
      site: 'x',
      label: 'Spinal cord',
      kind: 'cord',
      probability: 0.6,
      supporting: [told, evidence('reflexes/knee|left', 'left knee reflex brisk', weight)],
    });

  it('comes after what was seen, and without a path', () => {
    expect(answer('single-site', [cord(2)])).toContain(
      'because of left knee reflex brisk (of reflexes/knee|left) and back pain.',
    );
  });

  it('comes first where it weighs far more', () => {
    expect(answer('single-site', [cord(0.5)])).toContain('because of back pain and left knee reflex brisk.');
  });
});

describe('where too little was examined', () => {
  const lobe = (name: string, probability: number) =>
    site({ site: name, label: `${name} lobe`, kind: 'hemisphere', side: 'left', probability });

  it('says what several likely sites have in common', () => {
    const none = site({ site: 'no-lesion', label: 'No lesion', kind: 'none', probability: 0.3 });
    const words = answer('insufficient', [none, lobe('Parietal', 0.25), lobe('Temporal', 0.2)]);
    expect(words).toContain('points most to the cerebral hemisphere on the left (45 % over several sites)');
  });

  it('names the nearest site where nothing is in common', () => {
    const cord = site({ site: 'x', label: 'Spinal cord', kind: 'cord', probability: 0.3 });
    expect(answer('insufficient', [cord, lobe('Parietal', 0.25)])).toContain('The nearest fit is');
  });
});

describe('what a site leaves unexplained', () => {
  const open = evidence('autonomic/orthostatic-hypotension|midline', 'orthostatic hypotension', -1);
  const nigra = site({
    site: 'x',
    label: 'Akinetic-rigid disorder',
    kind: 'basal-ganglia',
    probability: 0.9,
    unexplained: [open],
  });

  it('is said where the likeliest cause does not account for it either', () => {
    expect(answer('diffuse-process', [nigra])).toContain('This leaves unexplained orthostatic hypotension.');
    expect(answer('diffuse-process', [nigra], { ofCause: new Set([open.finding]) })).not.toContain('unexplained');
  });
});
