import { parentPort } from 'node:worker_threads';
import { loadExamSteps } from '../context.ts';
import { type BatchTask, convertBatch } from './convert/convert-batch.ts';

/** A worker of `neuroexam convert`: answers each batch of lines with its output and faults. */
const steps = loadExamSteps();
parentPort?.on('message', (task: BatchTask) => parentPort?.postMessage(convertBatch(steps, task)));
