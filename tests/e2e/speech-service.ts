// Answers on loopback where Chromium would ask its remote speech service, so that the browser's real SpeechRecognition
// object gives real events and no sound leaves the machine. The browser sends an utterance's audio up one HTTP/2 request and
// reads the results, as length-prefixed messages, from another; the two share a `pair` number.
import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { constants, createSecureServer, type Http2ServerRequest, type Http2ServerResponse, type ServerHttp2Session } from 'node:http2';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { program } from '../programs/programs.ts';
import { speechMessage, type SpeechMessage } from './speech-message.ts';
import { removeFolder, temporaryFolder } from './temporary.ts';

/** One utterance that the browser is sending. */
export type Listening = {
  /** 1 for the first utterance of the service, and so on. */
  number: number;
  /** The query of the browser's request: language, interim results, and so on. */
  query: URLSearchParams;
  /** Resolves when the first audio has come. */
  heard: Promise<void>;
  send: (message: SpeechMessage) => void;
  /** Has the browser stopped sending? Then nothing is heard any more. */
  isOver: () => boolean;
  /** No more results. Waits until the browser stops sending: before that, it would take the end for a broken network. */
  close: () => Promise<void>;
  /** The connection breaks off, as when the network goes. */
  breakOff: () => void;
};

export type SpeechService = {
  /** Command line arguments that lead the browser here. */
  args: string[];
  close: () => Promise<void>;
};

/** The longest a browser takes to close its connections once its pages are gone, in ms. */
const CLOSING = 2000;

export async function startSpeechService(answer: (listening: Listening) => Promise<void>): Promise<SpeechService> {
  const downs = new Map<string, Expected<Http2ServerResponse>>();
  const downOf = (pair: string): Expected<Http2ServerResponse> => {
    const known = downs.get(pair) ?? expected<Http2ServerResponse>();
    downs.set(pair, known);
    return known;
  };
  let count = 0;

  const up = async (request: Http2ServerRequest, response: Http2ServerResponse, query: URLSearchParams): Promise<void> => {
    const heard = expected<void>();
    request.on('data', () => heard.arrive());
    const finished = expected<void>();
    request.on('end', () => response.writeHead(200).end());
    let over = false;
    request.on('close', () => {
      over = true;
      finished.arrive();
    });
    const down = await downOf(query.get('pair') ?? '').arrival;
    count += 1;
    const answering = answer({
      number: count,
      query,
      heard: heard.arrival,
      send: (message) => {
        if (!down.stream.closed && !down.writableEnded) down.write(speechMessage(message));
      },
      isOver: () => over,
      close: async () => {
        await finished.arrival;
        down.end();
      },
      breakOff: () => down.stream.close(constants.NGHTTP2_INTERNAL_ERROR),
    });
    // Who answers may be asking a panel that closes meanwhile: the browser's end of the line then closes, too.
    await answering.catch(async (error: unknown) => {
      await Promise.race([finished.arrival, new Promise((go) => setTimeout(go, CLOSING))]);
      if (!over) throw error;
    });
  };

  const server = createSecureServer(throwAwayCertificate(), (request, response) => {
    const { pathname, searchParams } = new URL(request.url, 'https://localhost');
    if (pathname.endsWith('/down')) {
      response.writeHead(200, { 'content-type': 'application/x-protobuf' });
      downOf(searchParams.get('pair') ?? '').arrive(response);
    } else if (pathname.endsWith('/up')) {
      void up(request, response, searchParams);
    } else {
      response.writeHead(404).end();
    }
  });
  const sessions = new Set<ServerHttp2Session>();
  server.on('session', (session) => sessions.add(session));
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const { port } = server.address() as AddressInfo;
  return {
    args: [`--host-resolver-rules=MAP www.google.com:443 127.0.0.1:${port}`, '--ignore-certificate-errors'],
    close: () =>
      new Promise((done) => {
        server.close(() => done());
        for (const session of sessions) session.destroy();
      }),
  };
}

type Expected<T> = { arrival: Promise<T>; arrive: (value: T) => void };

function expected<T>(): Expected<T> {
  let arrive: (value: T) => void = () => undefined;
  const arrival = new Promise<T>((resolve) => {
    arrive = resolve;
  });
  return { arrival, arrive };
}

function throwAwayCertificate(): { key: Buffer; cert: Buffer } {
  const folder = temporaryFolder();
  const [key, cert] = [join(folder, 'key.pem'), join(folder, 'cert.pem')];
  const kind = ['req', '-x509', '-newkey', 'rsa:2048', '-nodes', '-days', '2', '-subj', '/CN=localhost'];
  execFileSync(program('openssl'), [...kind, '-keyout', key, '-out', cert], { stdio: 'ignore' });
  const pair = { key: readFileSync(key), cert: readFileSync(cert) };
  removeFolder(folder);
  return pair;
}
