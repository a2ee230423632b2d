// How far a picture that was brought in has come, and what can keep it from being read at all, as data.

export type PictureStage = 'opening' | 'decoding' | 'measuring';

export type PictureFault =
  | 'file unread'
  | 'no picture'
  /** Of a raw file. */
  | 'no picture inside'
  | 'only a small picture inside'
  | 'too large'
  | 'too small'
  /** The reading ended over it, or could not begin. */
  | 'stopped';
