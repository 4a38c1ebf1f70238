import express, { type ErrorRequestHandler, type Express, type Request, type Response } from 'express';
import { rateLimit } from 'express-rate-limit';
import helmet from 'helmet';
import { refusalStatus } from '../../shared/wire/refusal-status.ts';
import { readWith } from '../../shared/wire/read-command.ts';
import { signInSchema } from '../../shared/wire/sign-in-schema.ts';
import { faultRefusal } from '../door/fault-refusal.ts';
import { told } from '../door/told.ts';
import { isPaper, malformed, refused, type Answer, type Paper } from './answer.ts';
import { act, ask, isAct } from './ask.ts';
import { handIn, mostHandInBytes } from './hand-in.ts';
import { paperReaders } from './papers.ts';
import type { Painter } from './paint.ts';
import type { Plant } from './plant.ts';
import { pressRoutes } from './press-routes.ts';
import type { StaticKiosk } from './static-kiosk.ts';
import { cookieFor, tokenOf } from './token-of.ts';

/** Largest command; a plan of many gates stays far below. */
export const mostCommandBytes = 256 * 1024;
const mostSignInBytes = 4 * 1024;
const mostCertificateBytes = 5 * 1024 * 1024;

/** Everything that is answered over HTTP. The live channel hangs on the same server beside it. */
export function httpApp(plant: Plant, painter: Painter, kiosk: StaticKiosk): Express {
  const app = express();
  const papers = paperReaders(painter);
  app.disable('x-powered-by');
  app.set('trust proxy', plant.trustProxy ? 1 : false);
  app.set('etag', false);
  app.use(helmet(pageRules));
  app.use('/api', (_, response, next) => {
    response.set('Cache-Control', 'no-store');
    next();
  });

  app.post('/api/commands', express.json({ limit: mostCommandBytes, strict: false }), needsJson, async (request, response) => {
    const holder = await plant.signOn.find(tokenOf(request));
    const reply = await plant.door.give(request.body, holder?.session ?? null);
    response.status(reply.ok ? 200 : refusalStatus(reply.refusal.code)).json(reply);
  });
  pressRoutes(app, plant, needsJson, limitTo(600));
  app.post('/api/session', limitTo(120), express.json({ limit: mostSignInBytes, strict: false }), needsJson, (request, response) => signIn(plant, request, response));
  app.delete('/api/session', async (request, response) => {
    const holder = await plant.signOn.find(tokenOf(request));
    if (holder !== null) await plant.sessions.end(holder.signedOn.key);
    response.set('Set-Cookie', cookieFor('', request.secure)).status(204).end();
  });
  app.post('/api/attachments', express.json({ limit: mostHandInBytes, strict: false }), needsJson, async (request, response) => {
    const holder = await plant.signOn.find(tokenOf(request));
    send(response, await handIn(plant, request.body, holder?.session ?? null));
  });
  app.post('/api/certificates/verify', limitTo(120), express.raw({ type: () => true, limit: mostCertificateBytes }), async (request, response) => {
    const document: unknown = request.body;
    if (!Buffer.isBuffer(document) || document.length === 0) return send(response, malformed('body', 'must be a PDF'));
    response.json(await plant.certificates.verify(document));
  });
  app.use('/api', async (request, response) => {
    const allowed = allowedAt(request.baseUrl + request.path);
    if (request.method === 'POST' && isAct(request.originalUrl)) {
      const holder = await plant.signOn.find(tokenOf(request));
      const done = await act(plant, request.originalUrl, holder?.session ?? null);
      if (done !== null) return send(response, done);
    }
    if (request.method !== 'GET' && request.method !== 'HEAD') return send(response, refused(allowed === null ? { code: 'unknownAddress', path: request.originalUrl } : { code: 'methodNotAllowed', method: request.method, allowed }));
    if (allowed !== null && !allowed.includes('GET')) return send(response.set('Allow', allowed), refused({ code: 'methodNotAllowed', method: request.method, allowed }));
    const holder = await plant.signOn.find(tokenOf(request));
    send(response, await ask(plant, request.originalUrl, holder?.session ?? null, papers));
  });
  app.use(kiosk.serve);
  app.use((request, response) => send(response, refused({ code: 'unknownAddress', path: request.originalUrl })));
  app.use(lastResort(plant));
  return app;
}

/** The kiosk loads nothing from elsewhere. Plain http is allowed on the plant's own network, so nothing is forced to https here. */
const pageRules: Parameters<typeof helmet>[0] = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      defaultSrc: [`'self'`], imgSrc: [`'self'`, 'data:', 'blob:'], objectSrc: [`'none'`], baseUri: [`'none'`], frameAncestors: [`'none'`], formAction: [`'self'`],
    },
  },
  strictTransportSecurity: false,
  crossOriginOpenerPolicy: false,
};

/** What may be done at the addresses that take more than questions; null for all others. */
function allowedAt(path: string): string | null {
  switch (path) {
    case '/api/commands': case '/api/attachments': case '/api/certificates/verify': return 'POST';
    case '/api/session': return 'GET, POST, DELETE';
    default: return isAct(path) ? 'POST' : null;
  }
}

function send(response: Response, answer: Answer | Paper): void {
  if (isPaper(answer)) {
    response.status(200).set({ 'Content-Type': answer.type, 'Content-Disposition': `inline; filename="${answer.name.replaceAll(/[^\w.-]/g, '_')}"` }).end(answer.bytes);
    return;
  }
  response.status(answer.status).json(answer.body);
}

async function signIn(plant: Plant, request: Request, response: Response): Promise<void> {
  const read = readWith(signInSchema, request.body);
  if (!read.ok) return send(response, refused({ code: 'malformed', problems: read.problems }));
  const answer = await plant.signOn.signIn(read.value, request.ip ?? '');
  if ('refusal' in answer) {
    plant.log.warn({ badge: read.value.badge, address: request.ip, code: answer.refusal.code }, 'sign-on refused');
    return send(response, refused(answer.refusal));
  }
  plant.log.info({ badge: answer.badge, bench: answer.bench }, 'signed on');
  response.set('Set-Cookie', cookieFor(answer.token, request.secure)).json(answer);
}

function needsJson(request: Request, response: Response, next: () => void): void {
  if (request.is('application/json') === false || request.body === undefined) return send(response, refused({ code: 'notJson' }));
  next();
}

/** Requests a minute that one address may fail at before it is told to wait. */
function limitTo(perMinute: number) {
  return rateLimit({
    windowMs: 60_000, limit: perMinute, skipSuccessfulRequests: true, standardHeaders: 'draft-7', legacyHeaders: false, validate: { trustProxy: false },
    handler: (_, response) => send(response, refused({ code: 'tooBusy' })),
  });
}

/** What express itself stumbled over: a body too large or not JSON is the caller's; anything else is ours, and is logged. */
function lastResort({ log }: Plant): ErrorRequestHandler {
  return (fault: unknown, request, response, next) => {
    if (response.headersSent) return next(fault);
    const { type = '', limit = mostCommandBytes, status = 500 } = bodyFault(fault);
    // What is still being sent is let run out, or the sender would see a broken line in place of the answer.
    request.resume();
    if (type === 'entity.too.large') return void response.status(413).json(told({ code: 'tooLarge', mostBytes: limit }));
    if (fault instanceof URIError) return send(response, malformed('path', 'is not an address'));
    if (status >= 400 && status < 500) return send(response, refused({ code: 'notJson' }));
    log.error({ err: fault, path: request.path }, 'could not be answered');
    send(response, refused(faultRefusal(fault)));
  };
}

function bodyFault(fault: unknown): { readonly type?: string; readonly limit?: number; readonly status?: number } {
  return typeof fault === 'object' && fault !== null ? fault : {};
}
