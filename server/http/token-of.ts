import type { IncomingMessage } from 'node:http';

const cookieName = 'gatehand';

/** The token a request carries: `Authorization: Bearer …`, or the cookie of the kiosk. */
export function tokenOf({ headers }: Pick<IncomingMessage, 'headers'>): string | null {
  const bearer = /^Bearer ([A-Za-z0-9_-]{1,200})$/i.exec(headers.authorization ?? '')?.[1];
  if (bearer !== undefined) return bearer;
  for (const part of (headers.cookie ?? '').split(';')) {
    const [name = '', value = ''] = part.trim().split('=');
    if (name === cookieName) return value;
  }
  return null;
}

/** The cookie that carries a token; no page script can read it and no other site can send it. */
export function cookieFor(token: string, isSecure: boolean): string {
  return `${cookieName}=${token}; Path=/; HttpOnly; SameSite=Strict; Max-Age=${token === '' ? 0 : 14 * 3600}${isSecure ? '; Secure' : ''}`;
}
