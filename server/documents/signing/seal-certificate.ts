import { createHash, createPublicKey, sign, type KeyObject } from 'node:crypto';
import { certificateContentSchema, type CertificateContent, type CertificateData, type CertificateVerification } from '../../../shared/wire/certificate-data.ts';
import { canonicalJson } from './canonical-json.ts';

/** The name of a public key: the first 16 hexadecimal digits of the SHA-256 of its SubjectPublicKeyInfo. A private key answers for its public half. */
export function keyIdOf(key: KeyObject): string {
  const publicKey = key.type === 'private' ? createPublicKey(key) : key;
  return createHash('sha256').update(publicKey.export({ type: 'spki', format: 'der' })).digest('hex').slice(0, 16);
}

/** SHA-256 of a text, hexadecimal. */
export function digestOf(canonical: string): string {
  return createHash('sha256').update(canonical, 'utf8').digest('hex');
}

const letters = '0123456789ABCDEFGHJKMNPQRSTVWXYZ'; // no I, L, O, U: nothing to mishear or misread

/** The first 60 bits of a digest as three groups of four characters. */
export function shortCodeOf(digest: string): string {
  const bits = BigInt(`0x${digest.slice(0, 15)}`);
  const code = Array.from({ length: 12 }, (_, i) => letters[Number((bits >> BigInt(55 - 5 * i)) & 31n)] ?? '').join('');
  return `${code.slice(0, 4)}-${code.slice(4, 8)}-${code.slice(8)}`;
}

/**
 * Signs the canonical form of a certificate's content.
 * @param privateKey Ed25519; RFC 8032 (node:crypto)
 */
export function signCertificate(canonical: string, privateKey: KeyObject): CertificateVerification {
  const digest = digestOf(canonical);
  return {
    algorithm: 'Ed25519', digest, keyId: keyIdOf(privateKey),
    signature: sign(null, Buffer.from(canonical, 'utf8'), privateKey).toString('base64'), shortCode: shortCodeOf(digest),
  };
}

/** Checks the content's shape and puts the seal on it. @throws ZodError when the content is not a certificate's: a caller's bug */
export function sealCertificate(content: CertificateContent, privateKey: KeyObject): CertificateData {
  const checked = certificateContentSchema.parse(content);
  return { ...checked, verification: signCertificate(canonicalJson(checked), privateKey) };
}
