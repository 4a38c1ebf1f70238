import { z } from 'zod';
import { bench, id, pin } from './field-schemas.ts';

/** What signs a person on at a bench. */
export const signInSchema = z.strictObject({ badge: id, pin, bench });
export type SignIn = z.infer<typeof signInSchema>;
