// Pages with faults put into them on purpose: what the proof must see, or it proves nothing.

const FAULTS = [
  '<svg width="2000" height="1"></svg>',
  '<svg width="9" height="9" viewBox="0 0 90 90"><text y="20" font-size="20">a</text></svg>',
  '<input type="checkbox" style="color: red"/>',
  '<img src="nowhere.png"/>',
  "<script>throw new Error('broken')</script>",
].join("");

/** Each with what its proofs have to say, by its policy and without one; by the name of the report. */
export const CROOKED = [
  {
    name: "crooked",
    make: (html) => html.replace("</main>", `${FAULTS}</main>`),
    expected: {
      validity: ["no-inline-style", "input-missing-label", "wcag/h37"],
      looks: [
        "the policy refuses img-src",
        "the policy refuses script-src-elem",
        "the policy refuses style-src-attr",
        "the console says (error)",
        "px wide in 390 px",
        "stands out to the right",
        "letters of 2 px in text",
        "is under 44 x 44: input",
      ],
      accessibility: ["label:", "image-alt:"],
    },
  },
  {
    name: "crooked-without-policy",
    make: (html) => html.replace(/<meta http-equiv[^>]*>/, "").replace("</main>", `${FAULTS}</main>`),
    expected: { looks: ["asks for file:", "a script breaks: broken"] },
  },
];
