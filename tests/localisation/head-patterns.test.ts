import { describe, expect, it } from 'vitest';
import { headPatternShifts } from '../../src/localisation/inference/head-patterns.ts';
import { midline, power, signs } from './case-writing.ts';
import { oddsBy } from './odds.ts';

const odds = oddsBy(headPatternShifts);

describe('what signs of head and mind say together', () => {
  const weak = power({ 'hip-flexion': '3', 'shoulder-abduction': '4' });
  const drowsy = midline({ drowsiness: true });

  it('a brainstem that fails on both sides shows at eyes, face, throat or balance', () => {
    const findings = { higherFunction: drowsy, power: weak };
    expect(odds({ findings }, 'brainstem-diffuse', 'brainstem')).toBeLessThan(1);
    expect(odds({ findings }, 'pons-ventral', 'brainstem')).toBe(1);
    const cranialNerves = midline({ 'skew-deviation': true });
    expect(odds({ findings: { ...findings, cranialNerves } }, 'brainstem-diffuse', 'brainstem')).toBe(1);
    const history = { symptoms: [{ key: 'diplopia', present: true }] };
    expect(odds({ findings, history }, 'brainstem-diffuse', 'brainstem')).toBe(1);
  });

  it('swollen discs and lost fields are no sign of the brainstem', () => {
    const findings = { higherFunction: drowsy, cranialNerves: signs({ 'optic-disc-swelling': true }) };
    expect(odds({ findings }, 'brainstem-diffuse', 'brainstem')).toBeLessThan(1);
  });

  it('repetition that fails alone lies behind the fissure, and with other loss of language anywhere', () => {
    const alone = { higherFunction: midline({ 'impaired-repetition': true, 'expressive-aphasia': false }) };
    expect(odds({ findings: alone }, 'cortex-parietal', 'hemisphere', 'left')).toBeGreaterThan(1);
    expect(odds({ findings: alone }, 'cortex-middle-cerebral-upper', 'hemisphere', 'left')).toBeLessThan(1);
    expect(odds({ findings: alone }, 'cortex-parietal', 'hemisphere', 'right')).toBe(1);
    const beside = { higherFunction: midline({ 'impaired-repetition': true, 'expressive-aphasia': true }) };
    expect(odds({ findings: beside }, 'cortex-parietal', 'hemisphere', 'left')).toBe(1);
  });

  it('what ails the whole brain widens both pupils and not one', () => {
    const widened = (side: 'left' | 'both') => ({
      findings: { cranialNerves: [{ sign: 'dilated-pupil', side, present: true }] },
    });
    expect(odds(widened('left'), 'diffuse-encephalopathy', 'encephalopathy')).toBeLessThan(1);
    expect(odds(widened('left'), 'midbrain-tegmentum', 'brainstem')).toBe(1);
    expect(odds(widened('both'), 'diffuse-encephalopathy', 'encephalopathy')).toBe(1);
  });

  it('limbs alone that fail are not of the base of the skull, unless the head hurts or a cranial nerve fails', () => {
    const findings = { power: weak };
    expect(odds({ findings }, 'basal-meningeal-process', 'meninges')).toBeLessThan(0.2);
    const history = { symptoms: [{ key: 'headache', present: true }] };
    expect(odds({ findings, history }, 'basal-meningeal-process', 'meninges')).toBe(1);
    const cranialNerves = signs({ 'sixth-nerve-palsy': [true, null] });
    expect(odds({ findings: { ...findings, cranialNerves } }, 'basal-meningeal-process', 'meninges')).toBe(1);
  });

  it('who names a nerve of the eye speaks of no muscle that wastes and no junction without transmitter', () => {
    const named = { cranialNerves: signs({ 'third-nerve-palsy': true }) };
    expect(odds({ findings: named }, 'oculopharyngeal-myopathy', 'muscle')).toBeLessThan(1);
    expect(odds({ findings: named }, 'presynaptic-junction', 'junction')).toBeLessThan(1);
    expect(odds({ findings: named }, 'postsynaptic-junction', 'junction')).toBe(1);
    const unnamed = { cranialNerves: signs({ ophthalmoplegia: true }) };
    expect(odds({ findings: unnamed }, 'oculopharyngeal-myopathy', 'muscle')).toBe(1);
  });

  it('sound pupils and lids leave no lesion of the sympathetic fibres', () => {
    const sound = { cranialNerves: signs({ 'horner-syndrome': false }) };
    expect(odds({ findings: sound }, 'oculosympathetic-chain', 'cranial-nerve')).toBeLessThan(1);
    const history = { symptoms: [{ key: 'drooping-eyelids', present: true }] };
    expect(odds({ findings: sound, history }, 'oculosympathetic-chain', 'cranial-nerve')).toBe(1);
    const found = { cranialNerves: signs({ 'horner-syndrome': [true, false] }) };
    expect(odds({ findings: found }, 'oculosympathetic-chain', 'cranial-nerve')).toBe(1);
  });

  it('a tongue that fails alone has lost the nerve with a canal of its own', () => {
    const tongue = midline({ 'tongue-weakness': true, 'flaccid-dysarthria': true, dysphagia: true });
    expect(odds({ findings: { cranialNerves: tongue } }, 'jugular-foramen', 'cranial-nerve')).toBeLessThan(1);
    const palate = { cranialNerves: [...tongue, ...midline({ 'palatal-weakness': true })] };
    expect(odds({ findings: palate }, 'jugular-foramen', 'cranial-nerve')).toBe(1);
    const hoarse = { symptoms: [{ key: 'voice-change', present: true }] };
    const findings = { cranialNerves: tongue };
    expect(odds({ findings, history: hoarse }, 'jugular-foramen', 'cranial-nerve')).toBe(1);
  });

  it('a tremor of holding with slurred speech and double sight is of the cerebellum, but after decades', () => {
    const findings = {
      involuntaryMovements: [{ sign: 'postural-tremor', site: 'upper-limb', side: 'both', present: true }],
    };
    const told = (durationDays: number, ...keys: readonly string[]) => ({
      findings,
      history: { onset: { pace: 'chronic', durationDays }, symptoms: keys.map((key) => ({ key, present: true })) },
    });
    const both = told(300, 'slurred-speech', 'diplopia');
    expect(odds(both, 'action-tremor', 'basal-ganglia')).toBeLessThan(0.2);
    expect(odds(both, 'cerebellar-degeneration', 'cerebellum')).toBeGreaterThan(2);
    expect(odds(told(300, 'tremor', 'voice-change'), 'action-tremor', 'basal-ganglia')).toBe(1);
    expect(odds(told(7000, 'slurred-speech', 'unsteadiness'), 'action-tremor', 'basal-ganglia')).toBe(1);
  });
});
