import { useEffect, useState } from 'preact/hooks';
import { type Draft, withZone } from '../draft/draft.ts';
import { change, draft } from '../draft/draft-store.ts';
import { ChoiceRow } from './choice-row.tsx';
import { countIn, type DurationUnit, daysOf, durationOf, durationUnits } from './duration.ts';
import { FaultList, hasFault } from './fault-list.tsx';
import { NumberField } from './number-field.tsx';
import { choicesOf, courses, paces, sexes } from './onset-words.ts';
import type { NumberRead } from './read-number.ts';

/** Who is examined, when, and how it began. */
export function PersonAndTime() {
  return (
    <section class="story-part" aria-labelledby="story-person">
      <h2 id="story-person" tabIndex={-1}>
        Person and time
      </h2>
      <div class="story-fields">
        <Age />
        <ChoiceRow
          legend="Sex"
          choices={choicesOf(sexes)}
          chosen={draft.value.person.sex}
          onChoose={(sex) => edit('Sex', 'person', 'sex', sex)}
        />
        <ExaminedAt />
      </div>
      <ChoiceRow
        legend="Onset: from the first symptom to the worst in"
        choices={choicesOf(paces)}
        chosen={draft.value.onset.pace}
        onChoose={(pace) => edit('Onset', 'onset', 'pace', pace)}
      />
      <div class="story-fields">
        <Since />
      </div>
      <ChoiceRow
        legend="Course since"
        choices={choicesOf(courses)}
        chosen={draft.value.course}
        onChoose={(course) =>
          change('Course', ({ course: _before, ...rest }) => (course === undefined ? rest : { ...rest, course }))
        }
      />
      <FaultList id="course-faults" pointer="/history/course" />
    </section>
  );
}

/** Sets one value of the person or the onset, or takes it out. */
function edit<Part extends 'person' | 'onset', Name extends keyof Draft[Part]>(
  what: string,
  part: Part,
  name: Name,
  value: Draft[Part][Name] | undefined,
): void {
  change(what, (before) => {
    const { [name]: _before, ...rest } = before[part];
    return { ...before, [part]: value === undefined ? rest : { ...rest, [name]: value } };
  });
}

function Age() {
  return (
    <NumberField
      label="Age in years"
      value={draft.value.person.ageYears}
      pointer="/person/ageYears"
      read={({ comparator, unit = 'years' }) =>
        comparator === undefined && /^(y|a$)/i.test(unit) ? undefined : 'Write the age in years, such as 46 or 0.5.'
      }
      onTake={(number) => edit('Age', 'person', 'ageYears', number?.value)}
    />
  );
}

function Since() {
  const days = draft.value.onset.durationDays;
  const [unit, setUnit] = useState<DurationUnit>(days === undefined ? 'days' : durationOf(days).unit);
  useEffect(() => {
    if (days !== undefined && daysOf({ count: countIn(days, unit), unit }) !== days) setUnit(durationOf(days).unit);
  }, [days, unit]);
  const count = days === undefined ? undefined : countIn(days, unit);
  const take = (typed: number | undefined, inUnit: DurationUnit): void => {
    setUnit(inUnit);
    edit('Began', 'onset', 'durationDays', typed === undefined ? undefined : daysOf({ count: typed, unit: inUnit }));
  };
  return (
    <NumberField
      label="Began"
      value={count}
      pointer="/history/onset/durationDays"
      read={problemOfDuration}
      onTake={(number) => take(number?.value, unitNamed(number?.unit) ?? unit)}
    >
      <label>
        <span class="unseen">Unit of time</span>
        <select
          value={unit}
          onChange={({ currentTarget }) => {
            const wanted = currentTarget.value as DurationUnit;
            if (count === undefined) setUnit(wanted);
            else take(count, wanted);
          }}
        >
          {durationUnits.map((one) => (
            <option key={one} value={one}>
              {one}
            </option>
          ))}
        </select>
      </label>
      <span>before the examination</span>
    </NumberField>
  );
}

function problemOfDuration({ comparator, unit }: Extract<NumberRead, { value: number }>): string | undefined {
  if (comparator !== undefined) return 'Write the time itself, as near as it is known.';
  return unit !== undefined && unitNamed(unit) === undefined ? `Choose ${durationUnits.join(', ')}.` : undefined;
}

/** The unit that the letters begin, as in "3 w". */
function unitNamed(text: string | undefined): DurationUnit | undefined {
  return text === undefined ? undefined : durationUnits.find((unit) => unit.startsWith(text.toLowerCase()));
}

/** Shown in the time of this device, whatever zone it was stated in. */
function ExaminedAt() {
  const moment = new Date(draft.value.examinedAt);
  const [day, time = ''] = withZone(moment).split('T');
  const zone = time.slice(8);
  const set = (at: Date): void => {
    if (!Number.isNaN(at.getTime())) {
      change('Time of the examination', (before) => ({ ...before, examinedAt: withZone(at) }));
    }
  };
  return (
    <div class="story-field">
      <label>
        <span class="label">Examined at (UTC{zone})</span>
        <input
          type="datetime-local"
          value={`${day}T${time.slice(0, 5)}`}
          aria-invalid={hasFault('/examinedAt')}
          aria-describedby="examined-faults"
          onChange={({ currentTarget }) => set(new Date(currentTarget.value))}
        />
      </label>
      <button type="button" class="plain" onClick={() => set(new Date())}>
        Now
      </button>
      <FaultList id="examined-faults" pointer="/examinedAt" />
    </div>
  );
}
