import { faults } from '../assessment.ts';
import { faultsWithin } from './faults-at.ts';

interface FaultListProps {
  readonly id: string;
  /** JSON Pointer of the entry in the exam; undefined while it is not in the exam. */
  readonly pointer: string | undefined;
  /** What the page itself has to say of what was typed. */
  readonly problem?: string | undefined;
}

/** What is wrong with an entry, in the service's own words. */
export function FaultList({ id, pointer, problem }: FaultListProps) {
  const found = pointer === undefined ? [] : faultsWithin(faults.value, pointer);
  const messages = [...new Set([...(problem === undefined ? [] : [problem]), ...found.map(({ message }) => message)])];
  return (
    <div id={id} class="entry-faults" role="alert">
      {messages.map((message) => (
        <p key={message}>
          <span aria-hidden="true">▲ </span>
          {message}
        </p>
      ))}
    </div>
  );
}

export function hasFault(pointer: string | undefined): boolean {
  return pointer !== undefined && faultsWithin(faults.value, pointer).length > 0;
}
