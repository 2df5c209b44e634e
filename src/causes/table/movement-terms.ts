/** What several tables of movement disorders have in common. */
import { recalled } from '../../kernel/cite.ts';

export const hyperkinetic = 'hyperkinetic-syndrome';

export const movementChapter = recalled('adams-victor', 'disorders of movement and posture');
export const dystoniaChapter = recalled('adams-victor', 'dystonias and tics');

export const dopamineBlockers = ['antipsychotic', 'metoclopramide'];

export const chorea = [
  'involuntary-movements/chorea',
  'involuntary-movements/hemiballism',
  'involuntary-movements/athetosis',
];

/** Signs of dystonia. */
export const dystonia = ['involuntary-movements/dystonia', 'inspection/head-tilt', 'gait/dystonic'];
