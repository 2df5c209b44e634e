import { closedObject, type JsonSchema } from '../../exam/schema/json-schema.ts';
import { difficultyKeys } from '../../practice/difficulty.ts';
import { neuraxisPartKeys } from '../../practice/neuraxis-parts.ts';
import { practiceSchemas } from '../../practice/practice-bodies.ts';

const text = { type: 'string' } as const;
const says = (description: string): JsonSchema => ({ ...text, description });
const count = { type: 'integer', minimum: 0 } as const;
const share = { type: 'number', minimum: 0, maximum: 1 } as const;
const list = (items: JsonSchema): JsonSchema => ({ type: 'array', items });
const orNull = (schema: JsonSchema): JsonSchema => ({ anyOf: [schema, { type: 'null' }] });
const sideOrNull = orNull({ ...text, enum: ['left', 'right', 'both'] });
const levelOrNull = orNull(says('segment'));
const part = { ...text, enum: [...neuraxisPartKeys] };
const caution = says('that the patient is simulated and invented');

const asked = {
  item: says('id of an item of the catalogue'),
  side: { ...text, enum: ['left', 'right'] },
  site: says('part of the body or landmark'),
  dermatome: text,
  territory: text,
};
const site = { site: says('key of the site'), label: text, side: sideOrNull, level: levelOrNull };
const described = { ...site, part, partLabel: text, isDiffuse: { type: 'boolean' } };
const describedNames = Object.keys(described);
const entries: JsonSchema = { type: 'object', additionalProperties: true };
const leading = closedObject({ ...site, probability: share }, [...Object.keys(site), 'probability']);
const pointerOrNull = orNull(says('JSON Pointer of the item in the body'));

/** What the practice mode takes and answers. */
export const practiceApiSchemas: Readonly<Record<string, JsonSchema>> = {
  PracticeWish: practiceSchemas.patients,
  PracticeExamination: practiceSchemas.examinations,
  PracticeCommitment: practiceSchemas.answers,
  PracticePatient: closedObject(
    {
      patient: says('names the patient to the service, which alone can read it'),
      person: closedObject({ ageYears: count, sex: { ...text, enum: ['female', 'male'] } }, ['ageYears', 'sex']),
      history: { ...entries, description: 'as an exam has it' },
      vignette: says('what the person says, in plain words'),
      caution,
    },
    ['patient', 'person', 'history', 'vignette', 'caution'],
  ),
  PracticeFindings: closedObject(
    {
      shown: list(
        closedObject(
          {
            pointer: says('JSON Pointer of the item that asked for it'),
            item: text,
            section: text,
            text: says('the finding in words'),
            finding: { ...entries, description: 'the finding as an exam has it' },
          },
          ['pointer', 'item', 'section', 'text', 'finding'],
        ),
      ),
      unanswered: list(
        closedObject({ pointer: text, item: text, text, because: says('why nothing can be said') }, [
          'pointer',
          'item',
          'text',
          'because',
        ]),
      ),
      findings: { ...entries, description: 'all that was shown, as the findings of an exam' },
      caution,
    },
    ['shown', 'unanswered', 'findings', 'caution'],
  ),
  PracticeSites: closedObject(
    {
      difficulties: list(
        closedObject({ difficulty: { ...text, enum: [...difficultyKeys] }, label: text }, ['difficulty', 'label']),
      ),
      parts: list(
        closedObject(
          {
            part,
            label: text,
            sites: list(
              closedObject(
                {
                  site: text,
                  label: text,
                  sides: list({ ...text, enum: ['left', 'right', 'both'] }),
                  levels: list(closedObject({ level: text, label: text }, ['level', 'label'])),
                },
                ['site', 'label', 'sides', 'levels'],
              ),
            ),
          },
          ['part', 'label', 'sites'],
        ),
      ),
      count,
      caution,
    },
    ['difficulties', 'parts', 'count', 'caution'],
  ),
  PracticeAnswer: closedObject(
    {
      lesion: closedObject(
        {
          ...described,
          code: closedObject({ system: text, code: text, display: text }, ['system', 'code', 'display']),
        },
        [...describedNames, 'code'],
      ),
      commitment: closedObject(described, describedNames),
      verdict: closedObject({ grade: { ...text, enum: ['right', 'near', 'wrong'] }, because: text }, [
        'grade',
        'because',
      ]),
      reasons: list(
        closedObject(
          {
            examined: pointerOrNull,
            text: says('the finding in words'),
            stance: {
              ...text,
              enum: ['follows', 'spared', 'unexplained', 'unexpected'],
              description:
                'the lesion makes it; the lesion leaves it alone; abnormal without the lesion; not as the lesion would have it',
            },
            because: text,
          },
          ['examined', 'text', 'stance', 'because'],
        ),
      ),
      supported: closedObject(
        {
          conclusion: text,
          probabilityOfLesion: share,
          localisations: list(
            closedObject({ ...site, levelRange: orNull(list(text)), probability: share }, [
              ...Object.keys(site),
              'levelRange',
              'probability',
            ]),
          ),
        },
        ['conclusion', 'probabilityOfLesion', 'localisations'],
        { description: 'what the engine makes of the findings at the moment of commitment' },
      ),
      leftOut: list(
        closedObject(
          {
            ...asked,
            label: text,
            because: text,
            gainBits: { type: 'number', minimum: 0 },
            text: says('what would have been found'),
          },
          ['item', 'label', 'because', 'gainBits'],
          { description: 'an item not examined that tells the lesion from the site committed to' },
        ),
      ),
      items: closedObject(
        { yours: count, efficient: orNull({ ...count, description: 'null when that examiner was not sure either' }) },
        ['yours', 'efficient'],
      ),
      efficient: closedObject(
        {
          sureFrom: share,
          itemsAtMost: count,
          isSure: { type: 'boolean' },
          ledFrom: orNull({ ...count, description: 'items from which on the lesion itself led' }),
          steps: list(
            closedObject({ asked: closedObject(asked, ['item']), text, because: text, leading }, [
              'asked',
              'text',
              'because',
              'leading',
            ]),
          ),
        },
        ['sureFrom', 'itemsAtMost', 'isSure', 'ledFrom', 'steps'],
        { description: 'an examiner who always does what is expected to tell most' },
      ),
      caution,
      modelVersion: text,
    },
    [
      'lesion',
      'commitment',
      'verdict',
      'reasons',
      'supported',
      'leftOut',
      'items',
      'efficient',
      'caution',
      'modelVersion',
    ],
  ),
};
