import type { Course, Exam } from '../../exam/exam.ts';
import { kinds, sites } from './history/history-weight.ts';
import type { Applies, Shift } from './shift.ts';

interface CourseWeight {
  readonly applies: Applies;
  readonly factor: number;
  /** A clause that completes "... because ...". */
  readonly because: string;
}

const row = (applies: Applies, factor: number, because: string): CourseWeight => ({ applies, factor, because });

const diffuse = kinds('muscle', 'polyneuropathy', 'polyradiculoneuropathy', 'motor-neuron-system', 'ganglion');
const growthsAndInfections = sites(
  'cerebellopontine-angle',
  'cavernous-sinus',
  'foramen-magnum',
  'basal-meningeal-process',
  'cortex-frontal',
  'cortex-parasagittal',
  'jugular-foramen',
  'optic-chiasm',
);
/**
 * How a stated course shifts the odds of sites, relative to no word on it. Direction common practice, size judged after how often
 * each course is stated of lesions of each kind.
 */
const weights: Readonly<Partial<Record<Course, readonly CourseWeight[]>>> = {
  // Most illnesses that come to notice go on, and a stroke that grows over hours is called so as well.
  progressive: [
    row(growthsAndInfections, 1.15, 'growth and infection go on'),
    row(sites('vestibular-nerve'), 0.7, 'a lost labyrinth is made up for'),
    row(kinds('none'), 0.8, 'what has no lesion comes and goes'),
  ],
  static: [
    row(kinds('junction'), 0.3, 'weakness of junctions waxes and wanes'),
    row(diffuse, 0.4, 'the disease would have gone on'),
    row(kinds('encephalopathy', 'meninges'), 0.45, 'the disease would have gone on or passed'),
    row(kinds('basal-ganglia', 'intracranial-pressure'), 0.6, 'the disease would have gone on'),
    row(kinds('cerebellum'), 0.7, 'a cerebellum that wastes goes on wasting'),
    row(growthsAndInfections, 0.6, 'growth and infection would have gone on'),
    row(kinds('cord', 'cauda-equina'), 0.85, 'what presses on it would have gone on'),
    row(kinds('nerve', 'cranial-nerve', 'visual-pathway'), 1.35, 'harm to one nerve stands where it was done'),
    row(kinds('hemisphere', 'brainstem', 'plexus', 'root'), 1.25, 'harm that was done at once stands'),
  ],
  improving: [
    row(kinds('motor-neuron-system'), 0.25, 'lost motor cells do not come back'),
    row(kinds('basal-ganglia', 'polyneuropathy', 'muscle', 'junction'), 0.6, 'it seldom mends by itself'),
    row(growthsAndInfections, 0.6, 'growth and infection do not mend by themselves'),
    row(kinds('hemisphere', 'brainstem', 'none'), 1.4, 'strokes and attacks mend'),
    row(kinds('cranial-nerve', 'nerve', 'plexus', 'root'), 1.2, 'pressed and inflamed nerves mend'),
  ],
  fluctuating: [
    row(kinds('junction'), 2.5, 'weakness of junctions waxes and wanes'),
    row(kinds('none'), 1.8, 'what has no lesion comes and goes'),
    row(kinds('encephalopathy', 'intracranial-pressure'), 1.4, 'wakefulness and pressure wax and wane'),
    row(kinds('cord', 'polyneuropathy', 'polyradiculoneuropathy', 'root'), 0.7, 'it keeps its course through the day'),
    row(kinds('motor-neuron-system', 'anterior-horn'), 0.5, 'lost motor cells do not come back'),
  ],
  'relapsing-remitting': [
    row(sites('medial-longitudinal-fasciculus', 'optic-nerve'), 1.8, 'multiple sclerosis has its favourite places'),
    row(kinds('brainstem', 'cranial-nerve', 'cord'), 1.3, 'demyelination comes in attacks'),
    row(
      kinds('junction', 'polyradiculoneuropathy', 'multiple-nerves'),
      1.4,
      'immune disease of nerves comes in attacks',
    ),
    row(sites('vestibular-nerve'), 1.8, 'the labyrinth fails in attacks'),
    row(kinds('motor-neuron-system', 'anterior-horn', 'basal-ganglia'), 0.4, 'what dies does not come back'),
    row(sites('cerebellar-degeneration'), 0.6, 'what wastes does not come back'),
    row(sites('foramen-magnum'), 0.6, 'what presses there goes on'),
  ],
};

/** How the course of the illness shifts the odds of sites. */
export function courseShifts({ course }: Exam): readonly Shift[] {
  if (course === undefined) return [];
  return (weights[course] ?? []).map(({ applies, factor, because }) => ({
    applies,
    factor,
    because,
    pointer: '/history/course',
    text: `${course} course`,
    abnormal: factor >= 1,
    id: 'history/course',
  }));
}
