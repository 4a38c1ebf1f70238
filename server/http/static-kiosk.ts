import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { extname, join, relative, sep } from 'node:path';
import { promisify } from 'node:util';
import { brotliCompress, constants, gzip } from 'node:zlib';
import type { NextFunction, Request, Response } from 'express';

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css; charset=utf-8', '.svg': 'image/svg+xml', '.json': 'application/json; charset=utf-8',
  '.woff2': 'font/woff2', '.ttf': 'font/ttf', '.png': 'image/png', '.ico': 'image/x-icon', '.webmanifest': 'application/manifest+json', '.map': 'application/json; charset=utf-8', '.wasm': 'application/wasm',
};
const pressed = new Set(['.html', '.js', '.css', '.svg', '.json', '.ttf', '.webmanifest', '.map', '.wasm']);
const squeeze = { gzip: promisify(gzip), br: promisify(brotliCompress) };

interface Asset { readonly bytes: Buffer; readonly type: string; readonly tag: string; readonly isHashed: boolean; readonly small: Map<'br' | 'gzip', Promise<Buffer>> }

/** The built kiosk, read once and kept in memory, compressed at first asking. Every address without a file is the kiosk's own page. */
export class StaticKiosk {
  readonly #assets = new Map<string, Asset>();

  /** @param folder where the build has put it; null, or a folder that is not there, serves nothing */
  constructor(folder: string | null) {
    if (folder === null) return;
    for (const file of filesUnder(folder)) {
      const path = `/${relative(folder, file).split(sep).join('/')}`;
      const bytes = readFileSync(file);
      const tag = `"${createHash('sha256').update(bytes).digest('base64url').slice(0, 22)}"`;
      this.#assets.set(path, { bytes, tag, type: types[extname(file)] ?? 'application/octet-stream', isHashed: /^\/assets\/.+-[\w-]{8}\.\w+$/.test(path), small: new Map() });
    }
  }

  serve = async (request: Request, response: Response, next: NextFunction): Promise<void> => {
    if (request.method !== 'GET' && request.method !== 'HEAD') return next();
    const asset = this.#assets.get(request.path) ?? (extname(request.path) === '' ? this.#assets.get('/index.html') : undefined);
    if (asset === undefined) return next();
    response.set({ ETag: asset.tag, Vary: 'Accept-Encoding', 'Cache-Control': asset.isHashed ? 'public, max-age=31536000, immutable' : 'no-cache', 'Content-Type': asset.type });
    if (request.headers['if-none-match'] === asset.tag) return void response.status(304).end();
    const encoding = pressed.has(extname(request.path) === '' ? '.html' : extname(request.path)) ? request.acceptsEncodings('br', 'gzip') : false;
    if (encoding !== 'br' && encoding !== 'gzip') return void response.end(request.method === 'HEAD' ? undefined : asset.bytes);
    const body = await smaller(asset, encoding);
    response.set('Content-Encoding', encoding).end(request.method === 'HEAD' ? undefined : body);
  };
}

function smaller(asset: Asset, encoding: 'br' | 'gzip'): Promise<Buffer> {
  const there = asset.small.get(encoding) ?? (encoding === 'br' ? squeeze.br(asset.bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 9 } }) : squeeze.gzip(asset.bytes, { level: 9 }));
  asset.small.set(encoding, there);
  return there;
}

function filesUnder(folder: string): string[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name)).filter((file) => statSync(file).isFile());
}
