import type { KeyObject } from 'node:crypto';
import type { AnyState, Lot } from '../../shared/traveller/index.ts';
import { standingHolds } from '../../shared/traveller/index.ts';
import type { CertificateData } from '../../shared/wire/certificate-data.ts';
import { keyIdOf, sealCertificate, verifyCertificate } from '../documents/signing/index.ts';
import type { StateCache } from '../door/state-cache.ts';
import type { KeyStore } from '../journal/key-store.ts';
import { notFound, refused, type Answer } from './answer.ts';
import { certificateContent } from './certificate-content.ts';

export interface CertificatesParts {
  readonly states: StateCache;
  readonly keys: KeyStore;
  readonly privateKey: KeyObject;
  readonly publicKey: KeyObject;
  readonly names: () => Readonly<Record<string, string>>;
}

export interface CertificateVerdict {
  readonly verdict: 'genuine' | 'altered' | 'notOurs' | 'withdrawn';
  /** The first thing that does not hold; null where all does. */
  readonly why: string | null;
  readonly keyId: string | null;
  readonly certificate: null | { readonly number: string; readonly lot: string; readonly designation: string; readonly quantity: number; readonly issuedOn: string };
}

/** Issues certificates and checks them. A certificate once issued is kept and never made anew: later changes upstream do not touch it. */
export class Certificates {
  readonly publicKey: KeyObject;
  readonly #parts: CertificatesParts;

  constructor(parts: CertificatesParts) {
    this.#parts = parts;
    this.publicKey = parts.publicKey;
  }

  /** The sealed certificate of a lot that stands released; otherwise the answer that says why there is none. */
  async of(id: string): Promise<CertificateData | Answer> {
    const { state: lot } = await this.#parts.states.fresh(`lot:${id}`);
    if (lot?.kind !== 'lot') return notFound('lot', id);
    const { release } = lot;
    if (release === null) return refused({ code: 'notReleased', lot: id, why: 'never' });
    if (release.withdrawn !== null) return refused({ code: 'notReleased', lot: id, why: 'withdrawn' });
    if (standingHolds(lot).length > 0) return refused({ code: 'notReleased', lot: id, why: 'held' });
    return (await this.#kept(release.certificate)) ?? this.#issue(lot, release);
  }

  /** Says what a document that claims to be a certificate is worth. */
  async verify(document: Buffer): Promise<CertificateVerdict> {
    const check = verifyCertificate(document, [this.publicKey]);
    if (!check.ok) {
      const { code } = check.why;
      const isForeign = code === 'noDataAttached' || code === 'notJson' || code === 'notACertificate' || code === 'keyNotKnown';
      return { verdict: isForeign ? 'notOurs' : 'altered', why: code, keyId: null, certificate: null };
    }
    const { certificate: { number, issuedOn }, lot, product } = check.certificate;
    const { state } = await this.#parts.states.fresh(`lot:${lot.number}`);
    const release = state?.kind === 'lot' ? state.release : null;
    const stands = release !== null && release.certificate === number && release.withdrawn === null;
    return {
      verdict: stands ? 'genuine' : 'withdrawn', why: null, keyId: keyIdOf(this.publicKey),
      certificate: { number, lot: lot.number, designation: product.designation, quantity: lot.quantity, issuedOn },
    };
  }

  async #kept(number: string): Promise<CertificateData | null> {
    const text = await this.#parts.keys.getText(`certificate ${number}`);
    return text === null ? null : JSON.parse(text);
  }

  async #issue(lot: Lot, release: NonNullable<Lot['release']>): Promise<CertificateData> {
    const { keys, privateKey, names } = this.#parts;
    const batch = await this.#state(`batch:${lot.batch}`, 'batch');
    const parents: Lot[] = [];
    for (let from = lot.splitFrom; from !== null; from = parents.at(-1)?.splitFrom ?? null) parents.push(await this.#state(`lot:${from}`, 'lot'));
    const charges = [];
    for (const { charge } of lot.charges) charges.push(await this.#state(charge, charge.startsWith('coating:') ? 'coating' : 'furnace'));
    const coating = lot.product.layer === null ? null : (await this.#state(`layer:${lot.product.layer}`, 'layer')).card.name;
    const plant = (await this.#state('plant:plant', 'plant')).card;
    const data = sealCertificate(certificateContent({ lot, release, parents, batch, charges, coating, plant, names: names() }), privateKey);
    await keys.putIfAbsent(`certificate ${release.certificate}`, JSON.stringify(data));
    return (await this.#kept(release.certificate)) ?? data;
  }

  async #state<K extends AnyState['kind']>(stream: string, kind: K): Promise<Extract<AnyState, { kind: K }>> {
    const { state } = await this.#parts.states.fresh(stream);
    if (state === null || state.kind !== kind) throw new Error(`${stream} stands on a released lot's traveller and is not there`);
    return state as Extract<AnyState, { kind: K }>;
  }
}
