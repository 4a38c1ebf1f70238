import { z } from 'zod';

/** A caution as the plant words it; `text` null is the tool's own words. */
export interface WrittenCaution { readonly caution: string; readonly cautionVersion: number; readonly text: string | null; readonly shown: boolean; readonly reason: string; readonly by: string; readonly at: string }

/** What the plant has written of cautions; those it left alone are not among them. */
export const cautionsSchema = z.object({ cautions: z.array(z.object({ caution: z.string(), cautionVersion: z.number(), text: z.string().nullable(), shown: z.boolean(), reason: z.string(), by: z.string(), at: z.string() })) });
