import type { Exam, FamilyRelation } from '../exam/exam.ts';
import { relationWords } from './exam-query.ts';
import type { Modifier } from './modifier.ts';
import type { Cause, Inheritance } from './table/cause.ts';

type Ratios = Readonly<Partial<Record<FamilyRelation, number>>>;

/**
 * Who in the family has the like, as a likelihood ratio beyond that of a family history at all. By Mendel's rules a
 * dominant disease goes from parent to child, a recessive one shows among siblings whose parents are well, and what runs in
 * the mother's line reaches a child through a parent. The numbers are judged: nobody is certain that relatives are well.
 */
const relationRatios: Readonly<Record<Inheritance, Ratios>> = {
  'autosomal-dominant': { parent: 1.5, child: 1.5, grandparent: 1.3, sibling: 1 },
  'autosomal-recessive': { parent: 0.3, child: 0.3, grandparent: 0.4, sibling: 1.7, cousin: 0.8 },
  'x-linked': { parent: 0.8, grandparent: 1.3, sibling: 1.3, 'aunt-or-uncle': 1.5, cousin: 1.2 },
  mitochondrial: { parent: 1.2, sibling: 1.3, 'aunt-or-uncle': 1.2 },
};

const inheritanceWords: Readonly<Record<Inheritance, string>> = {
  'autosomal-dominant': 'dominant',
  'autosomal-recessive': 'recessive',
  'x-linked': 'X-linked',
  mitochondrial: 'maternal',
};

/** Related parents make a recessive disease likelier. Judged. */
const consanguinityRatio = 4;

/** How the family tree fits the way in which a cause is passed on; nothing for causes that are not. */
export function inheritanceModifiers(cause: Cause, exam: Exam): readonly Modifier[] {
  const { inheritance } = cause;
  if (inheritance === undefined) return [];
  const own = new Set((cause.history ?? []).flatMap(({ keys }) => keys));
  return exam.history.flatMap((statement): readonly Modifier[] => {
    const { kind, key, relation, present, pointer } = statement;
    if (kind !== 'family' || !present) return [];
    if (key === 'consanguinity') {
      const isListed = own.has('family/consanguinity');
      return inheritance.includes('autosomal-recessive') && !isListed
        ? [
            {
              ratio: consanguinityRatio,
              reason: () => ({ pointer, text: 'related parents fit recessive inheritance' }),
            },
          ]
        : [];
    }
    if (relation === undefined || !own.has(`family/${key}`)) return [];
    const best = inheritance
      .map((way) => ({ way, ratio: relationRatios[way][relation] ?? 1 }))
      .reduce((a, b) => (b.ratio > a.ratio ? b : a));
    const text = `${relationWords[relation] ?? 'a relative'} affected ${best.ratio >= 1 ? 'fits' : 'is unusual for'} ${inheritanceWords[best.way]} inheritance`;
    const saysOnlyWhere = key === 'similar-disorder';
    return [{ ratio: best.ratio, saysOnlyWhere, reason: () => ({ pointer, text }) }];
  });
}
