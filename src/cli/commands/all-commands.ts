import type { Command } from 'commander';
import { checkCommand } from './check.ts';
import { convertCommand } from './convert.ts';
import { deidentifyCommand } from './deidentify.ts';
import { deliveriesCommand } from './deliveries.ts';
import { eraseCommand } from './erase.ts';
import { erasuresCommand } from './erasures.ts';
import { forwardCommand } from './forward.ts';
import { keyCommand } from './key.ts';
import { loadDemoCommand } from './load-demo.ts';
import { serveCommand } from './serve.ts';
import type { Surroundings } from './surroundings.ts';
import { verifyAuditCommand } from './verify-audit.ts';
import { viewCommand } from './view.ts';

/** Every subcommand, in the order of the help; a further one is a file beside these and a line here. */
export const allCommands: readonly ((surroundings: Surroundings) => Command)[] = [
  serveCommand,
  convertCommand,
  checkCommand,
  viewCommand,
  deidentifyCommand,
  loadDemoCommand,
  keyCommand,
  eraseCommand,
  erasuresCommand,
  verifyAuditCommand,
  forwardCommand,
  deliveriesCommand,
];
