import { startFromEnvironment } from './start.ts';

const exitCode = await startFromEnvironment(process.env);
if (exitCode !== undefined) process.exitCode = exitCode;
