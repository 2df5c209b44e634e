import type { Draft } from '../draft/draft.ts';
import { withZone } from '../draft/draft.ts';
import { change, draft } from '../draft/draft-store.ts';
import { faultOfTyped, type ReferenceField, type ReferenceValue } from '../draft/typed-references.ts';
import { type FieldName, fieldLabels } from './places.ts';

/** What the service has said of a field, until it is changed. */
export type FieldFaults = Partial<Readonly<Record<FieldName, string>>>;

interface AboutFieldsProps {
  readonly faults: FieldFaults;
  /** Whether an empty field that is needed is told already: not before the examiner has tried to send. */
  readonly tellsMissing: boolean;
}

const hints: Readonly<Record<ReferenceField, string>> = {
  subject: 'Needed. A reference such as Patient/4711, or a number. No name.',
  encounter: 'A reference such as Encounter/88, or a number.',
  performer: 'A reference such as Practitioner/7, or a number.',
};

const statusLabels: Readonly<Record<Draft['status'], string>> = {
  preliminary: 'Preliminary: more may follow',
  final: 'Final',
  amended: 'Amended: corrects what was sent',
  'entered-in-error': 'Entered in error: withdraws what was sent',
};

/** Whom the exam is about, by whom, when, and how final it is. */
export function AboutFields({ faults, tellsMissing }: AboutFieldsProps) {
  const { status, corrects, examinedAt } = draft.value;
  const statuses = corrects === undefined ? ['preliminary', 'final'] : ['amended', 'entered-in-error'];
  return (
    <section class="block about" aria-labelledby="about-title">
      <h3 id="about-title">Whom and by whom</h3>
      <div class="fields">
        {(['subject', 'encounter', 'performer'] as const).map((field) => (
          <ReferenceInput key={field} field={field} fault={faults[field]} tellsMissing={tellsMissing} />
        ))}
        <div class="field">
          <label for="field-examinedAt">{fieldLabels.examinedAt}</label>
          <input
            id="field-examinedAt"
            type="datetime-local"
            value={localTime(examinedAt)}
            aria-invalid={faults.examinedAt !== undefined}
            aria-describedby="fault-examinedAt"
            onChange={({ currentTarget }) => {
              const moment = new Date(currentTarget.value);
              if (Number.isNaN(moment.getTime())) return;
              change('Time of the examination', (before) => ({ ...before, examinedAt: withZone(moment) }));
            }}
          />
          <p id="fault-examinedAt" class="fault">
            {faults.examinedAt}
          </p>
        </div>
        <div class="field">
          <label for="field-status">{fieldLabels.status}</label>
          <select
            id="field-status"
            value={status}
            aria-invalid={faults.status !== undefined}
            aria-describedby="fault-status"
            onChange={({ currentTarget }) =>
              change('Status', (before) => ({ ...before, status: currentTarget.value as Draft['status'] }))
            }
          >
            {statuses.map((one) => (
              <option key={one} value={one}>
                {statusLabels[one as Draft['status']]}
              </option>
            ))}
          </select>
          <p id="fault-status" class="fault">
            {faults.status}
          </p>
        </div>
      </div>
    </section>
  );
}

interface ReferenceInputProps {
  readonly field: ReferenceField;
  readonly fault: string | undefined;
  readonly tellsMissing: boolean;
}

function ReferenceInput({ field, fault, tellsMissing }: ReferenceInputProps) {
  const typed = draft.value[field];
  const carried = draft.value.carried?.[field];
  if (carried !== undefined) return <CarriedReference field={field} carried={carried} />;
  const own = typed === '' && !tellsMissing ? undefined : faultOfTyped(field, typed);
  const told = own ?? fault;
  return (
    <div class="field">
      <label for={`field-${field}`}>{fieldLabels[field]}</label>
      <input
        id={`field-${field}`}
        type="text"
        autocomplete="off"
        autocapitalize="off"
        spellcheck={false}
        required={field === 'subject'}
        maxLength={1000}
        value={typed}
        aria-invalid={told !== undefined}
        aria-describedby={`hint-${field} fault-${field}`}
        onChange={({ currentTarget }) =>
          change(fieldLabels[field], (before) => ({ ...before, [field]: currentTarget.value.trim() }))
        }
      />
      <p id={`hint-${field}`} class="hint">
        {hints[field]}
      </p>
      <p id={`fault-${field}`} class="fault">
        {told}
      </p>
    </div>
  );
}

/** What a corrected exam says and a line of text cannot: it goes as it was, unless the examiner gives another. */
function CarriedReference({ field, carried }: { readonly field: ReferenceField; readonly carried: unknown }) {
  return (
    <div class="field">
      <p class="label">{fieldLabels[field]}</p>
      <p>{referenceWords(carried)}</p>
      <button
        id={`field-${field}`}
        type="button"
        class="plain"
        onClick={() =>
          change(`${fieldLabels[field]}: to be given anew`, ({ carried: before, ...rest }) => {
            const { [field]: _gone, ...others } = before ?? {};
            return Object.keys(others).length === 0 ? rest : { ...rest, carried: others };
          })
        }
      >
        Give another instead
      </button>
    </div>
  );
}

export function referenceWords(value: unknown): string {
  const values = (Array.isArray(value) ? value : [value]) as readonly ReferenceValue[];
  return values
    .map(({ reference, identifier, display }) => [display, reference ?? identifier?.value].filter(Boolean).join(', '))
    .join('; ');
}

/** The moment in the time of this device, as the field takes it. */
function localTime(examinedAt: string): string {
  const moment = new Date(examinedAt);
  return Number.isNaN(moment.getTime()) ? '' : withZone(moment).slice(0, 16);
}

/** The first field that cannot be sent as it is. */
export function fieldAtFault(now: Draft): ReferenceField | undefined {
  return (['subject', 'encounter', 'performer'] as const).find(
    (field) => now.carried?.[field] === undefined && faultOfTyped(field, now[field]) !== undefined,
  );
}
