import { z } from 'zod';
import { SATURATION_UNITS } from '../traveller/index.ts';

/** The kinds of field that commands are made of. What a value means is judged by the traveller; here only its shape and its size. */

/** A number or key by which something is found, such as a lot, a gate or a badge. One line, no blanks at its ends. */
export const id = z.string().max(64).regex(/^[^\p{Cc}\s](?:[^\p{Cc}]*[^\p{Cc}\s])?$/u);
/** A key that is new here. It becomes part of stream names, so it holds neither colon nor slash. */
export const newKey = z.string().regex(/^[A-Za-z0-9][A-Za-z0-9._-]{0,63}$/);
/** The name of a stream, e.g. `lot:L26-0417`; a switching state's name is made of four keys. */
export const stream = z.string().max(300).regex(/^[a-z]+:[^\p{Cc}]+$/u);
/** One printed line with something on it: no control characters, no blanks at its ends. */
export const line = (most: number) => z.string().max(most).regex(/^[^\p{Cc}\s](?:[^\p{Cc}]*[^\p{Cc}\s])?$/u);
/** One line as a person typed it; an empty one is answered by the rule that asks for it. */
export const typed = (most: number) => z.string().max(most).regex(/^[^\p{Cc}]*$/u);
/** A passage of several lines as a person typed it; may be empty likewise. */
export const passage = (most = 500) => z.string().max(most).regex(/^(?:[^\p{Cc}]|[\n\t])*$/u);
/** A reason that will stand on the certificate beside a corrected entry. */
export const certificateReason = typed(200);
/** A number of things, 0 or more. Whether so many are there is for the traveller to say. */
export const count = z.int().min(0).max(1_000_000);
/** A number that things are counted by from 1: an ordinal, a version, a block. */
export const place = z.int().min(1).max(1_000_000_000);
/** A measured number, finite, far inside what can be squared and summed. */
export const quantity = z.number().min(-1e12).max(1e12);
export const positive = z.number().gt(0).max(1e12);
export const notNegative = z.number().min(0).max(1e12);
/** Percent, 0 … 100. */
export const percent = z.number().min(0).max(100);
/** A day that is in the calendar, YYYY-MM-DD. */
export const day = z.iso.date();
export const pin = z.string().regex(/^[0-9]{4,12}$/);
/** Name of the bench a person has signed on at. */
export const bench = line(60);
/** Two letters of ISO 3166-1. */
export const country = z.string().regex(/^[A-Z]{2}$/);
/** The unit a magnetic saturation was read in. */
export const saturationUnit = z.enum(SATURATION_UNITS);
