import { createPrivateKey, createPublicKey, generateKeyPairSync, type KeyObject } from 'node:crypto';
import type { KeyStore } from '../journal/key-store.ts';

const name = 'plant key, Ed25519, PKCS#8';

/** The key that signs this plant's certificates and checkpoints. Made at first use; a copy of the data folder is a copy of the key. */
export async function plantKey(keys: KeyStore): Promise<{ readonly privateKey: KeyObject; readonly publicKey: KeyObject }> {
  const kept = await keys.getText(name) ?? await make(keys);
  const privateKey = createPrivateKey(kept);
  return { privateKey, publicKey: createPublicKey(privateKey) };
}

async function make(keys: KeyStore): Promise<string> {
  const { privateKey } = generateKeyPairSync('ed25519');
  await keys.putIfAbsent(name, privateKey.export({ type: 'pkcs8', format: 'pem' }).toString());
  const kept = await keys.getText(name);
  if (kept === null) throw new Error('the plant key was kept and is not there');
  return kept;
}
