// Prints the plan of a JSON request as JSON; on bad input the sentence for the cook, and exit code 2.

import { batchRequestSchema, planBatch } from '../core/index.ts';

const USAGE = `Give one request as JSON, for example:
npm run plan -- '{"fruit":"damson","product":"butter","fruitMassKg":3,"jar":"half-pint","elevationM":300,"keep":"shelf"}'`;

function refuse(sentence: string): never {
  process.stderr.write(`${sentence}\n`);
  process.exit(2);
}

function parseJson(text: string | undefined): unknown {
  if (text === undefined) return refuse(USAGE);
  try {
    return JSON.parse(text);
  } catch {
    return refuse(`That is not JSON. ${USAGE}`);
  }
}

const asked = batchRequestSchema.safeParse(parseJson(process.argv[2]));
if (asked.success) process.stdout.write(`${JSON.stringify(planBatch(asked.data), null, 2)}\n`);
else refuse(asked.error.issues.map(({ message }) => message).join('\n'));
