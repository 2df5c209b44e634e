import { Command } from 'commander';
import { hashOf, isKeyName, isSubject, newKey } from '../../access/api-key.ts';
import { readScope } from '../../access/scope.ts';
import { UsageError } from './surroundings.ts';

interface Options {
  readonly name: string;
  readonly scope: readonly string[];
  readonly subject?: string;
}

export function keyCommand(): Command {
  return new Command('key')
    .description(
      'Make a static key: the key goes to standard error, once, and the line for API_KEYS_FILE to standard output.',
    )
    .requiredOption('--name <name>', 'the program that gets it, such as ward-7-forms')
    .requiredOption('--scope <scope...>', 'what it may do, such as system/exam.c')
    .option('--subject <reference>', 'the one subject that it may see, such as Patient/4711')
    .addHelpText(
      'after',
      `
  neuroexam key --name ward-7-forms --scope system/exam.cru >> keys.ndjson

The file holds the hash, never the key; give the key to the program and keep no copy. To change a key, add one of the same
name, change the program, and take the old line out. A running service takes the file anew within a second.`,
    )
    .action(({ name, scope, subject }: Options) => {
      if (!isKeyName(name)) throw new UsageError('--name takes small letters, digits, dots, dashes and underscores.');
      const unknown = scope.filter((one) => readScope(one) === undefined);
      if (unknown.length > 0) throw new UsageError(`No scope that is known here: ${unknown.join(', ')}.`);
      if (subject !== undefined && !isSubject(subject))
        throw new UsageError('--subject takes a reference, Patient/4711.');
      const key = newKey();
      process.stderr.write(`${key}\n`);
      process.stdout.write(`${JSON.stringify({ name, hash: hashOf(key), scopes: scope, subject })}\n`);
    });
}
