import type { Request } from 'express';
import { NotFoundError } from '../kernel/errors.ts';

/** Ids of resources. Source: HL7 FHIR R4, datatype `id`. */
const idForm = /^[A-Za-z0-9.-]{1,64}$/;

/** The id in the address of a resource. @throws NotFoundError for what can be none */
export function resourceIdOf(req: Request): string {
  const id = String(req.params.id);
  if (!idForm.test(id)) throw new NotFoundError('There is no resource with this id.');
  return id;
}
