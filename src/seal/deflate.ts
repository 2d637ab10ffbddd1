import type { Bytes } from "./bytes.ts";

type Way = ReadableWritablePair<Uint8Array, BufferSource>;

async function through(bytes: Bytes, way: Way): Promise<Bytes> {
  return new Uint8Array(await new Response(new Blob([bytes]).stream().pipeThrough(way)).arrayBuffer());
}

/** RFC 1951. Which bytes come out may differ from one machine to another; what they unfold to does not. */
export const deflated = (bytes: Bytes): Promise<Bytes> => through(bytes, new CompressionStream("deflate-raw") as Way);

/** @throws when the bytes are no whole deflate stream */
export const inflated = (bytes: Bytes): Promise<Bytes> => through(bytes, new DecompressionStream("deflate-raw") as Way);
