import { generateKeyPairSync, verify } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { certificatePdf } from '../../../server/documents/certificate/index.ts';
import { canonicalJson, keyIdOf, sealCertificate, shortCodeOf, signCertificate, verifyCertificate } from '../../../server/documents/signing/index.ts';
import { OutsideDomain } from '../../../shared/ground/outside-domain.ts';
import { plantKey, plantPublicKey, sampleContent } from './sample-certificate.ts';

const data = sealCertificate(sampleContent, plantKey);

describe('the canonical form', () => {
  // Published example of RFC 8785, section 3.2.2 and 3.2.3; from memory.
  it('writes the example of RFC 8785', () => {
    const given = { numbers: [333333333.33333329, 1e30, 4.5, 2e-3, 0.000000000000000000000000001], string: '€$\u000f\nA\'B"\\\\"/', literals: [null, true, false] };
    expect(canonicalJson(given)).toBe('{"literals":[null,true,false],"numbers":[333333333.3333333,1e+30,4.5,0.002,1e-27],"string":"€$\\u000f\\nA\'B\\"\\\\\\\\\\"/"}');
  });

  it('sorts names by UTF-16 code units (RFC 8785, 3.2.3, from memory)', () => {
    expect(canonicalJson({ '\u20ac': 1, '\r': 2, '\ufb33': 3, '1': 4, '\ud83d\ude00': 5, '\u0080': 6, '\u00f6': 7 })).toBe('{"\\r":2,"1":4,"\u0080":6,"ö":7,"€":1,"😀":5,"\ufb33":3}');
  });

  it('is the same whatever the order of names, and reads back the same', () => {
    fc.assert(fc.property(fc.jsonValue(), (value) => {
      const shuffled: unknown = JSON.parse(JSON.stringify(value), (_, member: unknown) =>
        (typeof member === 'object' && member !== null && !Array.isArray(member) ? Object.fromEntries(Object.entries(member).reverse()) : member));
      expect(canonicalJson(shuffled)).toBe(canonicalJson(JSON.parse(JSON.stringify(value))));
    }));
  });

  it.each([['not a number', Number.NaN], ['a function', () => 1], ['half a character', '\ud800'], ['a big integer', 1n]])('refuses %s', (_, value) => {
    expect(() => canonicalJson({ value })).toThrow(OutsideDomain);
  });
});

describe('the seal', () => {
  // RFC 8032, section 7.1, TEST 1 (from memory): the library's Ed25519 is the published one.
  it('agrees with the first vector of RFC 8032', () => {
    const spki = Buffer.from('302a300506032b6570032100d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a', 'hex');
    const signature = Buffer.from('e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b', 'hex');
    expect(verify(null, Buffer.alloc(0), { key: spki, format: 'der', type: 'spki' }, signature)).toBe(true);
  });

  it('names the same key by either half', () => {
    expect(keyIdOf(plantKey)).toBe(keyIdOf(plantPublicKey));
    expect(keyIdOf(plantKey)).toMatch(/^[0-9a-f]{16}$/);
  });

  it('makes a short code of the first 60 bits (derived by hand)', () => {
    expect(shortCodeOf(`00000000000000${'f'.repeat(50)}`)).toBe('0000-0000-000F');
    expect(shortCodeOf('f'.repeat(64))).toBe('ZZZZ-ZZZZ-ZZZZ');
    expect(shortCodeOf(`08${'0'.repeat(62)}`)).toBe('1000-0000-0000');
  });

  it('holds for the PDF and for the data file', async () => {
    const pdf = await certificatePdf(data);
    expect(verifyCertificate(pdf, [plantPublicKey])).toEqual({ ok: true, certificate: data, keyId: data.verification.keyId });
    expect(verifyCertificate(JSON.stringify(data, null, 2), [plantPublicKey])).toMatchObject({ ok: true });
  });
});

describe('a false certificate is found out', () => {
  const other = generateKeyPairSync('ed25519');
  const json = (change: object): string => JSON.stringify({ ...data, ...change });

  it('when a number was changed', () => {
    expect(verifyCertificate(json({ lot: { ...data.lot, quantity: 9999 } }), [plantPublicKey])).toMatchObject({ ok: false, why: { code: 'digestDiffers' } });
  });

  it('when any one value anywhere was changed', () => {
    const paths: string[] = [];
    JSON.stringify(sampleContent, function walk(this: unknown, name: string, value: unknown) {
      if (typeof value === 'number') paths.push(name);
      return value;
    });
    for (let at = 0; at < paths.length; at += 1) {
      let seen = -1;
      const changed = JSON.stringify(data, (_, value: unknown) => {
        if (typeof value !== 'number') return value;
        seen += 1;
        return seen === at ? value + 1 : value;
      });
      expect(verifyCertificate(changed, [plantPublicKey]).ok, `${paths[at] ?? ''}, number ${at}`).toBe(false);
    }
    expect(paths.length).toBeGreaterThan(80);
  });

  it('when the digest was made anew but not the signature', () => {
    const { verification: _, ...content } = data;
    const changed = { ...content, lot: { ...content.lot, quantity: 9999 } };
    const { digest, shortCode } = signCertificate(canonicalJson(changed), other.privateKey);
    expect(verifyCertificate(JSON.stringify({ ...changed, verification: { ...data.verification, digest, shortCode } }), [plantPublicKey]))
      .toEqual({ ok: false, why: { code: 'signatureDiffers', keyId: data.verification.keyId } });
  });

  it('when a stranger signed it, and when his key takes the plant\'s name', () => {
    const forged = sealCertificate(sampleContent, other.privateKey);
    expect(verifyCertificate(JSON.stringify(forged), [plantPublicKey])).toEqual({ ok: false, why: { code: 'keyNotKnown', keyId: keyIdOf(other.publicKey) } });
    const renamed = { ...forged, verification: { ...forged.verification, keyId: data.verification.keyId } };
    expect(verifyCertificate(JSON.stringify(renamed), [plantPublicKey])).toMatchObject({ ok: false, why: { code: 'signatureDiffers' } });
  });

  it.each([
    { what: 'a PDF without data', document: Buffer.from('%PDF-1.7\n%%EOF'), why: { code: 'noDataAttached' } },
    { what: 'no JSON', document: 'C26-000417', why: { code: 'notJson' } },
    { what: 'another JSON', document: '{"form":"else"}', why: { code: 'notACertificate', at: 'form' } },
    { what: 'a field more', document: JSON.stringify({ ...data, colour: 'blue' }), why: { code: 'notACertificate', at: '' } },
  ])('when it is $what', ({ document, why }) => {
    expect(verifyCertificate(document, [plantPublicKey])).toEqual({ ok: false, why });
  });

  it('when a second data file was added to the PDF', async () => {
    const pdf = await certificatePdf(data);
    const extra = `\n9999 0 obj\n<< /Type /EmbeddedFile /Length 2 >>\nstream\n{}\nendstream\nendobj\n`;
    expect(verifyCertificate(Buffer.concat([pdf, Buffer.from(extra)]), [plantPublicKey])).toEqual({ ok: false, why: { code: 'severalAttached', count: 2 } });
  });

  it('when the attached stream is damaged or would fill the memory', async () => {
    const { deflateSync } = await import('node:zlib');
    for (const stream of [Buffer.from('damaged'), deflateSync(Buffer.alloc(64 * 1024 * 1024))]) {
      const pdf = Buffer.concat([Buffer.from('%PDF-1.7\n1 0 obj\n<< /Type /EmbeddedFile /Filter /FlateDecode >>\nstream\n'), stream, Buffer.from('\nendstream\nendobj\n')]);
      expect(verifyCertificate(pdf, [plantPublicKey])).toEqual({ ok: false, why: { code: 'noDataAttached' } });
    }
  });
});
