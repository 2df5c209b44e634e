import type { Reason } from '../../causes/ranked-cause.ts';
import { findingReasons } from '../../causes/reasons.ts';
import type { BedsideFacts } from '../bedside-facts.ts';
import { isAtLeast, written } from './thresholds.ts';

/** Infections of the weeks before, which rouse immunity against nerves and brain. */
export const infectionsBefore = [
  'preceding-infection',
  'preceding-gastroenteritis',
  'preceding-respiratory-infection',
] as const;

/** Fever by thermometer, else by sign, else by history, whatever the blood shows: one fever is one reason. */
export function trueFever(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const temperature = query.quantity('body-temperature', 'Cel');
  const measured =
    temperature !== undefined && isAtLeast(temperature, 38)
      ? [{ pointer: temperature.pointer, text: `temperature ${written(temperature)} °C` }]
      : [];
  const seen = findingReasons(query.abnormal(['autonomic/fever']));
  return [measured, seen, facts.told('fever')].find((reasons) => reasons.length > 0) ?? [];
}

/** The same, or a raised C-reactive protein (10 mg/L or more). */
export function feverReasons(facts: BedsideFacts): readonly Reason[] {
  const crp = facts.query.quantity('crp', 'mg/L');
  return [
    ...trueFever(facts),
    ...(crp !== undefined && isAtLeast(crp, 10)
      ? [{ pointer: crp.pointer, text: `C-reactive protein ${written(crp)} mg/L` }]
      : []),
  ];
}
