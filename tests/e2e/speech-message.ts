// One message of the speech service to the browser, in the protobuf wire format, with its length before it.
// Field numbers: Chromium's public source, components/speech/… google_streaming_api.proto (from memory).

export type SpeechMessage = {
  /** 0 success, 1 no speech, 2 aborted, 3 audio capture, 4 network, 5 not allowed, … */
  status?: number;
  results?: readonly SpeechResult[];
};

type SpeechResult = { final: boolean; alternatives: readonly SpeechAlternative[] };

type SpeechAlternative = { transcript: string; confidence: number };

export function speechMessage({ status = 0, results = [] }: SpeechMessage): Buffer {
  const body = Buffer.concat([numberField(1, status), ...results.map((result) => bytesField(2, resultBody(result)))]);
  const length = Buffer.alloc(4);
  length.writeUInt32BE(body.length);
  return Buffer.concat([length, body]);
}

function resultBody({ final, alternatives }: SpeechResult): Buffer {
  return Buffer.concat([...alternatives.map((alternative) => bytesField(1, alternativeBody(alternative))), numberField(2, final ? 1 : 0)]);
}

function alternativeBody({ transcript, confidence }: SpeechAlternative): Buffer {
  return Buffer.concat([bytesField(1, Buffer.from(transcript)), floatField(2, confidence)]);
}

function numberField(field: number, value: number): Buffer {
  return Buffer.concat([varint(field << 3), varint(value)]);
}

function bytesField(field: number, value: Buffer): Buffer {
  return Buffer.concat([varint((field << 3) | 2), varint(value.length), value]);
}

function floatField(field: number, value: number): Buffer {
  const bytes = Buffer.alloc(4);
  bytes.writeFloatLE(value);
  return Buffer.concat([varint((field << 3) | 5), bytes]);
}

function varint(value: number): Buffer {
  const bytes: number[] = [];
  let rest = value;
  while (rest > 127) {
    bytes.push((rest & 127) | 128);
    rest >>>= 7;
  }
  return Buffer.from([...bytes, rest]);
}
