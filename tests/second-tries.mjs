/** Names the tests that went well only when they were tried again: none of them is well. */
export default class SecondTries {
  named = [];

  onTestCaseResult(test) {
    const { flaky = false } = test.diagnostic() ?? {};
    if (!flaky) return;
    const why = (test.result().errors ?? []).map(({ message, stacks = [] }) => {
      const { file = '', line = 0 } = stacks.at(0) ?? {};
      return `  ${message.slice(0, 500)} (${file}:${line})`;
    });
    this.named.push([`${test.module.relativeModuleId}: ${test.name}`, ...why].join('\n'));
  }

  onTestRunEnd() {
    if (this.named.length === 0) return;
    console.log(`\nWent well only at the second try (${this.named.length}):\n${this.named.join('\n')}`);
  }
}
