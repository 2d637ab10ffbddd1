/** The part of Eleventy that we call; the package ships no types. */
declare module "@11ty/eleventy" {
  export class Eleventy {
    constructor(
      input: string,
      output: string,
      options: {
        readonly configPath: false;
        readonly quietMode: boolean;
        readonly config: (config: import("./config.ts").EleventyConfig) => void;
      },
    );
    toJSON(): Promise<unknown>;
  }
}
