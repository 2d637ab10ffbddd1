/**
 * The first vector of each length of text and additional data in NIST CAVP `gcmEncryptExtIV256.rsp` (256-bit key, 96-bit IV, 128-bit tag):
 * https://csrc.nist.gov/projects/cryptographic-algorithm-validation-program/cavp-testing-block-cipher-modes
 */
export const NIST_GCM_256: readonly (readonly [
  key: string,
  iv: string,
  text: string,
  aad: string,
  ciphertext: string,
  tag: string,
])[] = [
  [
    "b52c505a37d78eda5dd34f20c22540ea1b58963cf8e5bf8ffa85f9f2492505b4",
    "516c33929df5a3284ff463d7",
    "",
    "",
    "",
    "bdc1ac884d332457a1d2664f168c76f0",
  ],
  [
    "78dc4e0aaf52d935c3c01eea57428f00ca1fd475f5da86a49c8dd73d68c8e223",
    "d79cf22d504cc793c3fb6c8a",
    "",
    "b96baa8c1c75a671bfb2d08d06be5f36",
    "",
    "3e5d486aa2e30b22e040b85723a06e76",
  ],
  [
    "31bdadd96698c204aa9ce1448ea94ae1fb4a9a0b3c9d773b51bb1822666b8f22",
    "0d18e06c7c725ac9e362e1ce",
    "2db5168e932556f8089a0622981d017d",
    "",
    "fa4362189661d163fcd6a56d8bf0405a",
    "d636ac1bbedd5cc3ee727dc2ab4a9489",
  ],
  [
    "92e11dcdaa866f5ce790fd24501f92509aacf4cb8b1339d50c9c1240935dd08b",
    "ac93a1a6145299bde902f21a",
    "2d71bcfa914e4ac045b2aa60955fad24",
    "1e0889016f67601c8ebea4943bc23ad6",
    "8995ae2e6df3dbf96fac7b7137bae67f",
    "eca5aa77d51d4a0a14d9c51e1da474ab",
  ],
  [
    "dad89d9be9bba138cdcf8752c45b579d7e27c3dbb40f53e771dd8cfd500aa2d5",
    "cfb2aec82cfa6c7d89ee72ff",
    "b526ba1050177d05b0f72f8d67",
    "6e43784a91851a77667a02198e28dc32",
    "8b29e66e924ecae84f6d8f7d68",
    "1e365805c8f28b2ed8a5cadfd9079158",
  ],
  [
    "dc776f0156c15d032623854b625c61868e5db84b7b6f9fbd3672f12f0025e0f6",
    "67130951c4a57f6ae7f13241",
    "9378a727a5119595ad631b12a5a6bc8a91756ef09c8d6eaa2b718fe86876da20",
    "fd0920faeb7b212932280a009bac969145e5c316cf3922622c3705c3457c4e9f124b2076994323fbcfb523f8ed16d241",
    "6d958c20870d401a3c1f7a0ac092c97774d451c09f7aae992a8841ff0ab9d60d",
    "b876831b4ecd7242963b040aa45c4114",
  ],
  [
    "1fded32d5999de4a76e0f8082108823aef60417e1896cf4218a2fa90f632ec8a",
    "1f3afa4711e9474f32e70462",
    "06b2c75853df9aeb17befd33cea81c630b0fc53667ff45199c629c8e15dce41e530aa792f796b8138eeab2e86c7b7bee1d40b0",
    "",
    "91fbd061ddc5a7fcc9513fcdfdc9c3a7c5d4d64cedf6a9c24ab8a77c36eefbf1c5dc00bc50121b96456c8cd8b6ff1f8b3e480f",
    "30096d340f3d5c42d82a6f475def23eb",
  ],
  [
    "463b412911767d57a0b33969e674ffe7845d313b88c6fe312f3d724be68e1fca",
    "611ce6f9a6880750de7da6cb",
    "e7d1dcf668e2876861940e012fe52a98dacbd78ab63c08842cc9801ea581682ad54af0c34d0d7f6f59e8ee0bf4900e0fd85042",
    "0a682fbc6192e1b47a5e0868787ffdafe5a50cead3575849990cdd2ea9b3597749403efb4a56684f0c6bde352d4aeec5",
    "8886e196010cb3849d9c1a182abe1eeab0a5f3ca423c3669a4a8703c0f146e8e956fb122e0d721b869d2b6fcd4216d7d4d3758",
    "2469cecd70fd98fec9264f71df1aee9a",
  ],
];
