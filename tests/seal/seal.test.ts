import fc from "fast-check";
import { CompactEncrypt, compactDecrypt } from "jose";
import { describe, expect, test } from "vitest";
import { fromBase64url, toBase64url } from "../../src/seal/base64url.ts";
import { type Bytes, utf8 } from "../../src/seal/bytes.ts";
import { deflated, inflated } from "../../src/seal/deflate.ts";
import { decryptGcm, encryptGcm } from "../../src/seal/gcm.ts";
import { decryptJwe, encryptJwe, jweParts, jweText } from "../../src/seal/jwe.ts";
import { HEADER, opened } from "../../src/seal/open.ts";
import { ROUNDS, stretched, withPassphrase } from "../../src/seal/passphrase.ts";
import { ivFor, sealed, sealKeys } from "../../src/seal/seal.ts";
import { NIST_GCM_256 } from "./gcm-vectors.ts";

const hex = (text: string): Bytes => new Uint8Array(Buffer.from(text, "hex"));
const toHex = (bytes: Uint8Array): string => Buffer.from(bytes).toString("hex");
const secret = new Uint8Array(32).fill(7);
const keys = await sealKeys(secret, "ada-lund");

describe("AES-GCM", () => {
  test.each(NIST_GCM_256)("NIST CAVP, 256-bit key %s", async (key, iv, text, aad, ciphertext, tag) => {
    const terms = { key: hex(key), iv: hex(iv), aad: hex(aad) };
    const made = await encryptGcm(terms, hex(text));
    expect([toHex(made.ciphertext), toHex(made.tag)]).toEqual([ciphertext, tag]);
    expect(toHex(await decryptGcm(terms, hex(ciphertext), hex(tag)))).toBe(text);
  });
});

describe("JWE", () => {
  /** RFC 7516, appendix A.1: the content is encrypted by A256GCM, whatever was done with its key. */
  const cek = new Uint8Array([
    177, 161, 244, 128, 84, 143, 225, 115, 63, 180, 3, 255, 107, 154, 212, 246, 138, 7, 110, 91, 112, 46, 34, 105, 47,
    130, 203, 46, 122, 234, 64, 252,
  ]);
  const iv = new Uint8Array([227, 197, 117, 252, 2, 219, 233, 68, 180, 225, 77, 219]);
  const text = "The true sign of intelligence is not knowledge but imagination.";
  const header = "eyJhbGciOiJSU0EtT0FFUCIsImVuYyI6IkEyNTZHQ00ifQ";
  const encryptedKey =
    "OKOawDo13gRp2ojaHV7LFpZcgV7T6DVZKTyKOMTYUmKoTCVJRgckCL9kiMT03JGeipsEdY3mx_etLbbWSrFr05kLzcSr4qKAq7YN7e9jwQRb23nfa6c9d-StnImGyFDbSv04uVuxIp5Zms1gNxKKK2Da14B8S4rzVRltdYwam_lDp5XnZAYpQdb76FdIKLaVmqgfwX7XWRxv2322i-vDxRfqNzo_tETKzpVLzfiwQyeyPGLBIO56YJ7eObdv0je81860ppamavo35UgoRdbYaBcoh9QcfylQr66oc6vFWXRcZ_ZT2LawVCWTIy3brGPi6UklfCpIMfIjf7iGdXKHzg";
  const whole = `${header}.${encryptedKey}.48V1_ALb6US04U3b.5eym8TW_c8SuK0ltJ3rpYIzOeDQz7TALvtu6UG9oMo4vpzs9tX_EFShS8iB7j6jiSdiwkIr3ajwQzaBtQD_A.XFBoMYUZodetZdvTiFvSkQ`;

  test("RFC 7516, appendix A.1, is written letter by letter and read back", async () => {
    expect(jweText(await encryptJwe(cek, iv, { header, encryptedKey }, utf8(text)))).toBe(whole);
    expect(new TextDecoder().decode(await decryptJwe(cek, jweParts(whole)))).toBe(text);
  });

  test("has no other form than five parts in base64url", () => {
    for (const bad of [
      "",
      "a.b",
      whole.replace(/\.[^.]*$/, ""),
      `${whole}.`,
      whole.replace("48V1", "48V="),
      `${whole}=`,
    ])
      expect(() => jweParts(bad)).toThrow();
  });

  test("the header is the one that jose writes", () => {
    expect(JSON.parse(Buffer.from(HEADER, "base64url").toString())).toEqual({ alg: "dir", enc: "A256GCM", zip: "DEF" });
  });

  test("jose opens what we seal, and we open what jose seals", async () => {
    const ours = await sealed("Ada's winter", keys);
    expect(Buffer.from((await compactDecrypt(ours, keys.content)).plaintext).toString()).toBe("Ada's winter");
    const theirs = await new CompactEncrypt(utf8("Ada's winter"))
      .setProtectedHeader({ alg: "dir", enc: "A256GCM", zip: "DEF" })
      .encrypt(keys.content);
    expect(Buffer.from(await opened(theirs, keys.content)).toString()).toBe("Ada's winter");
  });
});

describe("base64url", () => {
  // RFC 4648 section 10, padding removed; the two letters of section 5 besides.
  test.each([
    ["", ""],
    ["f", "Zg"],
    ["fo", "Zm8"],
    ["foo", "Zm9v"],
    ["foob", "Zm9vYg"],
    ["fooba", "Zm9vYmE"],
    ["foobar", "Zm9vYmFy"],
    ["\xfb\xff", "-_8"],
  ])("of %j is %j", (text, expected) => {
    const bytes = new Uint8Array(Buffer.from(text, "latin1"));
    expect(toBase64url(bytes)).toBe(expected);
    expect(fromBase64url(expected)).toEqual(bytes);
  });

  test("gives every bytes back, and takes no second way to write them", () => {
    fc.assert(
      fc.property(fc.uint8Array(), (bytes) => {
        expect(toHex(fromBase64url(toBase64url(bytes)))).toBe(toHex(bytes));
      }),
    );
    for (const bad of ["Zh", "Zm9=", "Zg==", "Z", "Zm 9v", "Zm9v\n", "+/8"]) expect(() => fromBase64url(bad)).toThrow();
  });
});

describe("keys", () => {
  test("are HKDF-SHA-256 of the secret: RFC 5869, checked against Node's own", async () => {
    const { hkdfSync } = await import("node:crypto");
    const of = (use: string) =>
      Buffer.from(hkdfSync("sha256", secret, new Uint8Array(), `winterbook seal 1 ${use} ada-lund`, 32)).toString(
        "hex",
      );
    expect([toHex(keys.content), toHex(keys.iv)]).toEqual([of("content"), of("iv")]);
  });

  test("are others for every holder and every secret", async () => {
    const all = [
      keys,
      await sealKeys(secret, "ada-lunn"),
      await sealKeys(secret, "ada-lund 1"),
      await sealKeys(new Uint8Array(32).fill(8), "ada-lund"),
    ].flatMap(({ content, iv }) => [toHex(content), toHex(iv)]);
    expect(new Set(all).size).toBe(8);
  });

  // PBKDF2-HMAC-SHA256: RFC 7914, section 11 (64 bytes there; PBKDF2's first block does not hang on how many follow).
  test.each([
    ["passwd", "salt", 1, "55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc"],
    ["Password", "NaCl", 80_000, "4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56"],
  ])("words are stretched as RFC 7914 has it: %s", async (words, salt, rounds, expected) => {
    expect(toHex(await stretched(utf8(words), utf8(salt), rounds))).toBe(expected);
  });

  test("words add to the link's key and never replace it", async () => {
    expect(ROUNDS).toBeGreaterThanOrEqual(600_000);
    const with_ = (words: string, token = "token", key = keys.content) => withPassphrase(key, words, token);
    const own = await with_("four quiet words");
    const text = await sealed("Ada's winter", { ...keys, content: own });
    expect(await with_("  four quiet words ")).toEqual(own);
    expect(await with_("cafe\u0301")).toEqual(await with_("caf\u00e9"));
    for (const other of [keys.content, await with_("four quiet word"), await with_("four quiet words", "other")])
      await expect(opened(text, other)).rejects.toThrow();
    await expect(opened(text, await with_("four quiet words", "token", secret))).rejects.toThrow();
    expect(Buffer.from(await opened(text, own)).toString()).toBe("Ada's winter");
  });
});

describe("sealing", () => {
  test("the same text gives the same bytes, and opens to itself", async () => {
    await fc.assert(
      fc.asyncProperty(fc.string({ unit: "binary" }), async (text) => {
        const made = await sealed(text, keys);
        expect(await sealed(text, keys)).toBe(made);
        expect(await opened(made, keys.content)).toEqual(utf8(text));
      }),
    );
  });

  test("what is long becomes shorter before it is hidden", async () => {
    const text = "The tee felt easy. ".repeat(1000);
    expect((await sealed(text, keys)).length).toBeLessThan(text.length / 20);
    expect(await inflated(await deflated(utf8(text)))).toEqual(utf8(text));
  });

  test("the IV is the first 96 bits of HMAC-SHA-256 over what is encrypted", async () => {
    const { createHmac } = await import("node:crypto");
    const { iv } = jweParts(await sealed("Ada's winter", keys));
    const hmac = createHmac("sha256", keys.iv).update(await deflated(utf8("Ada's winter")));
    expect(toHex(iv)).toBe(hmac.digest("hex").slice(0, 24));
    expect(await ivFor(keys.iv, await deflated(utf8("Ada's winter")))).toEqual(iv);
  });

  test("ten thousand texts have ten thousand IVs", async () => {
    const seen = new Set<string>();
    for (let n = 0; n < 10_000; n++) seen.add((await sealed(`report ${n}`, keys)).split(".")[2]!);
    expect(seen.size).toBe(10_000);
  }, 60_000);

  test("a flipped bit in any place is refused", async () => {
    const made = await sealed("Ada's winter: bat speed rose by 3 mph.", keys);
    for (let at = 0; at < made.length; at++) {
      for (let bit = 0; bit < 7; bit++) {
        const flipped = String.fromCharCode(made.charCodeAt(at) ^ (1 << bit));
        await expect(opened(made.slice(0, at) + flipped + made.slice(at + 1), keys.content)).rejects.toThrow();
      }
    }
  });

  test("a message of another kind is refused, though its key is ours", async () => {
    const header = toBase64url(utf8('{"alg":"dir","enc":"A256GCM"}'));
    const text = await deflated(utf8("Ada's winter"));
    const other = { header, encryptedKey: "" };
    const made = await encryptJwe(keys.content, await ivFor(keys.iv, text), other, text);
    expect(await decryptJwe(keys.content, made)).toEqual(text);
    await expect(opened(jweText(made), keys.content)).rejects.toThrow("not ours");
  });

  test("a part that is missing, doubled or another message's is refused", async () => {
    const [made, other] = [await sealed("one", keys), await sealed("another", keys)];
    const parts = made.split(".");
    const broken = [
      made.slice(0, -1),
      `${made}A`,
      [...parts, "AA"].join("."),
      [parts[0], "AA", ...parts.slice(2)].join("."),
      [...parts.slice(0, 4), other.split(".")[4]].join("."),
      [parts[0], "", other.split(".")[2], ...parts.slice(3)].join("."),
      `eyJhbGciOiJkaXIiLCJlbmMiOiJBMjU2R0NNIn0.${parts.slice(1).join(".")}`,
    ];
    for (const text of broken) await expect(opened(text, keys.content)).rejects.toThrow();
    await expect(opened(made, keys.iv)).rejects.toThrow();
  });
});
