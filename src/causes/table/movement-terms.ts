/** What several tables of movement disorders have in common. */
import { recalled } from '../../kernel/cite.ts';

export const dystoniaChapter = recalled('adams-victor', 'dystonias and tics');

export const dopamineBlockers = ['antipsychotic', 'metoclopramide'];

/** Signs of dystonia. */
export const dystonia = ['involuntary-movements/dystonia', 'inspection/head-tilt', 'gait/dystonic'];
