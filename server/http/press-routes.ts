import express, { type Express, type RequestHandler } from 'express';
import { refusalStatus } from '../../shared/wire/refusal-status.ts';
import { feedBatchSchema } from '../../shared/wire/feed-schema.ts';
import { readWith } from '../../shared/wire/read-command.ts';
import { told } from '../door/told.ts';
import type { Plant } from './plant.ts';
import { tokenOf } from './token-of.ts';

/** Largest batch: 5,000 weights of some ten characters. */
const mostBatchBytes = 128 * 1024;

/** What balances send to: batches of weights by a press's own token, and where that token is made. @param limit slows down whoever tries wrong ones */
export function pressRoutes(app: Express, plant: Plant, needsJson: RequestHandler, limit: RequestHandler): void {
  app.post('/api/presses/:id/weights', limit, express.json({ limit: mostBatchBytes, strict: false }), needsJson, async (request, response) => {
    const id = String(request.params['id']);
    if (!(await plant.pressTokens.fits(id, tokenOf(request)))) return void response.status(401).json(told({ code: 'notSignedIn' }));
    const read = readWith(feedBatchSchema, request.body);
    if (!read.ok) return void response.status(400).json(told({ code: 'malformed', problems: read.problems }));
    const reply = await plant.feeds.take(id, read.value);
    response.status(reply.ok ? 200 : refusalStatus(reply.refusal.code)).json(reply);
  });
  app.post('/api/presses/:id/token', async (request, response) => {
    const session = (await plant.signOn.find(tokenOf(request)))?.session ?? null;
    if (session === null) return void response.status(401).json(told({ code: 'notSignedIn' }));
    const needed = ['keeper', 'engineer'] as const;
    if (!needed.some((role) => session.roles.includes(role))) return void response.status(403).json(told({ code: 'notYourRole', command: 'registerPress', needed }));
    const id = String(request.params['id']);
    const { state } = await plant.door.states.get(`press:${id}`);
    if (state?.kind !== 'press') return void response.status(404).json(told({ code: 'notFound', what: 'press', id }));
    plant.log.info({ press: id, by: session.badge }, 'a press got a new token');
    response.json({ press: id, token: await plant.pressTokens.renew(id) });
  });
}
