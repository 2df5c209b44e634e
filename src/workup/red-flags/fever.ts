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

/** Fever by history, by sign or by thermometer, whatever the blood shows. */
export function trueFever(facts: BedsideFacts): readonly Reason[] {
  const { query } = facts;
  const temperature = query.quantity('body-temperature', 'Cel');
  const measured =
    temperature !== undefined && isAtLeast(temperature, 38)
      ? [{ pointer: temperature.pointer, text: `temperature ${written(temperature)} °C` }]
      : [];
  const found = findingReasons(query.abnormal(['autonomic/fever']));
  // What one statement implies is one reason, in the words of the statement.
  const told = facts
    .told('fever')
    .filter(({ pointer }) => ![...found, ...measured].some((one) => one.pointer === pointer));
  return [...told, ...found.filter(({ pointer }) => pointer !== temperature?.pointer), ...measured];
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
