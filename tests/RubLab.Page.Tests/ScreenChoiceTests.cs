using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class ScreenChoiceTests(Published published)
{
    [RequiresChromiumFact]
    public async Task A_screen_chosen_twice_before_it_came_is_there_once_and_the_last_choice_is_what_shows()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.Page.EvaluateAsync(
            """
            async () => {
              const { go } = await import('/js/screens.js');
              const choose = screen => new Promise(done => {
                addEventListener('hashchange', done, { once: true });
                go(screen);
              });
              for (const screen of ['time', 'time', 'cure', 'time', 'time']) {
                await choose(screen);
              }
            }
            """);

        await Expect(bench.Page.Locator("#screen-time")).ToBeVisibleAsync();
        await Expect(bench.Page.Locator("#screen-cure")).ToHaveCountAsync(1);
        await Expect(bench.Page.Locator("#screen-cure")).ToBeHiddenAsync();
        await Expect(bench.Page.Locator("#time-weight")).ToHaveCountAsync(1);
        await Expect(bench.Page.Locator("#screen-bench")).ToBeHiddenAsync();
        await Expect(bench.Page.Locator("#to-time")).ToHaveAttributeAsync("aria-current", "page");
        await Expect(bench.Page.Locator("nav [aria-current='page']")).ToHaveCountAsync(1);
    }
}
