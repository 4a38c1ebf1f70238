import { verify, type KeyObject } from 'node:crypto';
import { certificateDataSchema, type CertificateData } from '../../../shared/wire/certificate-data.ts';
import { attachedData } from './attached-data.ts';
import { canonicalJson } from './canonical-json.ts';
import { digestOf, keyIdOf, shortCodeOf } from './seal-certificate.ts';

/** Why a certificate is not what it claims to be. */
export type CertificateFault =
  | { readonly code: 'noDataAttached' }
  | { readonly code: 'severalAttached'; readonly count: number }
  | { readonly code: 'notJson' }
  | { readonly code: 'notACertificate'; readonly at: string }
  | { readonly code: 'digestDiffers'; readonly stated: string; readonly found: string }
  | { readonly code: 'keyNotKnown'; readonly keyId: string }
  | { readonly code: 'signatureDiffers'; readonly keyId: string };

export type CertificateCheck =
  | { readonly ok: true; readonly certificate: CertificateData; readonly keyId: string }
  | { readonly ok: false; readonly why: CertificateFault };

/**
 * Checks a certificate without asking anyone: its data against its digest, and its signature against the plant's public keys, which the
 * checker has from the plant by another way. What holds is the data; a page is only its picture, so read the numbers from what is returned.
 * @param document the PDF, or the bytes or text of its data.json
 * @param plantKeys every public key the plant has published, Ed25519
 */
export function verifyCertificate(document: Buffer | string, plantKeys: readonly KeyObject[]): CertificateCheck {
  const isPdf = typeof document !== 'string' && document.subarray(0, 1024).includes('%PDF-');
  const files = isPdf ? attachedData(document) : [document];
  const [file] = files;
  if (file === undefined) return refused({ code: 'noDataAttached' });
  if (files.length > 1) return refused({ code: 'severalAttached', count: files.length });
  let json: unknown;
  try {
    json = JSON.parse(file.toString('utf8'));
  } catch {
    return refused({ code: 'notJson' });
  }
  const read = certificateDataSchema.safeParse(json);
  if (!read.success) return refused({ code: 'notACertificate', at: read.error.issues[0]?.path.join('.') ?? '' });
  return checkSeal(read.data, plantKeys);
}

function checkSeal(certificate: CertificateData, plantKeys: readonly KeyObject[]): CertificateCheck {
  const { verification, ...content } = certificate;
  const { keyId, digest, signature, shortCode } = verification;
  const canonical = canonicalJson(content);
  const found = digestOf(canonical);
  if (found !== digest) return refused({ code: 'digestDiffers', stated: digest, found });
  if (shortCodeOf(found) !== shortCode) return refused({ code: 'digestDiffers', stated: shortCode, found: shortCodeOf(found) });
  const key = plantKeys.find((known) => keyIdOf(known) === keyId);
  if (key === undefined) return refused({ code: 'keyNotKnown', keyId });
  const holds = verify(null, Buffer.from(canonical, 'utf8'), key, Buffer.from(signature, 'base64'));
  return holds ? { ok: true, certificate, keyId } : refused({ code: 'signatureDiffers', keyId });
}

function refused(why: CertificateFault): CertificateCheck {
  return { ok: false, why };
}
