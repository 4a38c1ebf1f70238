import { io, type Socket } from 'socket.io-client';

/** Opens a live channel with a token. @throws what the server says when it lets nobody in */
export async function openLive(url: string, token: string, headers: Record<string, string> = {}): Promise<Socket> {
  const socket = io(url, { transports: ['websocket'], auth: token === '' ? {} : { token }, extraHeaders: headers, forceNew: true, reconnection: false });
  await new Promise<void>((resolve, reject) => {
    socket.once('connect', resolve);
    socket.once('connect_error', (fault) => {
      socket.close();
      reject(fault);
    });
  });
  return socket;
}

/** The next event of a name. */
export function next<T>(socket: Socket, event: string): Promise<T> {
  return new Promise((resolve) => void socket.once(event, resolve));
}
