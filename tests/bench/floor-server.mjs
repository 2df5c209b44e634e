// The least that an Express service must do: take the body in, send a prepared answer of the same size back.
// Plain JavaScript, so that its start is not slowed by a compiler.
import { createServer } from 'node:http';
import express from 'express';

const app = express();
app.disable('x-powered-by');
app.set('etag', false);
for (const [path, size] of Object.entries(JSON.parse(process.env.ANSWER_BYTES ?? '{"/exams":2,"/localisation":2}'))) {
  const answer = Buffer.alloc(size, 'x');
  const send = (_req, res) => {
    res.setHeader('Content-Type', 'application/fhir+json; charset=utf-8');
    res.setHeader('Content-Length', answer.length);
    res.end(answer);
  };
  app.get(path, send);
  app.post(path, express.raw({ type: () => true, limit: '1mb' }), send);
}
const server = createServer(app);
server.listen(0, '127.0.0.1', () => process.stdout.write(`ready at http://127.0.0.1:${server.address().port}\n`));
