import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import type { Fault } from '../../kernel/errors.ts';
import { schemaFaults } from '../faults/schema-faults.ts';
import { type ExamPurpose, examSchema } from './exam-schemas.ts';

/** The faults of form of a body whose size has been checked already; none if the schema holds. */
export type ExamValidator = (body: unknown) => readonly Fault[];

export interface ExamValidators extends Readonly<Record<ExamPurpose, ExamValidator>> {
  /** Compiles the second step now instead of at the first wrong body; takes some tenths of a second. */
  readonly prepare: () => void;
}

/**
 * Validation in two steps. The first stops at the first error and is all that a right exam goes through; only a wrong one
 * is gone over again for every error. The second step is compiled when it is first needed.
 */
export function examValidators(quick: QuickValidators = compile(false)): ExamValidators {
  let thorough: Readonly<Record<ExamPurpose, ValidateFunction>> | undefined;
  const validator =
    (purpose: ExamPurpose): ExamValidator =>
    (body) => {
      if (quick[purpose](body)) return [];
      thorough ??= compile(true);
      const collect = thorough[purpose];
      collect(body);
      const faults = schemaFaults(collect.errors ?? [], body);
      return faults.length > 0 ? faults : [{ pointer: '', code: 'INVALID', message: 'The body breaks the schema.' }];
    };
  const prepare = (): void => {
    thorough ??= compile(true);
  };
  return { record: validator('record'), localise: validator('localise'), prepare };
}

/** Whether a body has the right form, by what its reading is for. */
export type QuickValidators = Readonly<Record<ExamPurpose, (body: unknown) => boolean>>;

function compile(allErrors: boolean): Readonly<Record<ExamPurpose, ValidateFunction>> {
  const { ajv, ids } = schemaCompiler({ allErrors });
  return { localise: validatorOf(ajv, ids.localise), record: validatorOf(ajv, ids.record) };
}

function validatorOf(ajv: Ajv2020, id: string): ValidateFunction {
  const validate = ajv.getSchema(id);
  if (validate === undefined) throw new RangeError(`there is no schema ${id}`);
  return validate;
}

/**
 * A compiler that knows both schemas, and their ids. They differ only in what is required at the top, so the rest of them
 * is compiled once.
 * @param options.isForFile whether the code is to be written to a file
 */
export function schemaCompiler({ allErrors, isForFile = false }: { allErrors: boolean; isForFile?: boolean }): {
  readonly ajv: Ajv2020;
  readonly ids: Readonly<Record<ExamPurpose, string>>;
} {
  const ajv = new Ajv2020({
    strict: true,
    strictRequired: false,
    strictTypes: false,
    // The schemas are generated; a test holds them against the meta-schema.
    validateSchema: false,
    // Own properties only: otherwise `required` is satisfied by what every object inherits.
    ownProperties: true,
    verbose: allErrors,
    allErrors,
    // Tidying the code takes longer than it ever saves at run time, unless it is done when building.
    code: isForFile ? { source: true } : { optimize: false },
  });
  const schema = examSchema('localise');
  const { required } = examSchema('record');
  const ids = { localise: String(schema.$id), record: 'record' };
  ajv.addSchema(schema, ids.localise);
  ajv.addSchema({ $ref: ids.localise, required }, ids.record);
  return { ajv, ids };
}
