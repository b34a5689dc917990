using Microsoft.Playwright;
using RubLab.Page.Tests.Harness;
using static Microsoft.Playwright.Assertions;

namespace RubLab.Page.Tests;

[Collection(PublishedTests.Name)]
public sealed class WeighOutTests(Published published)
{
    [RequiresChromiumFact]
    public async Task Mixes_come_before_cups_and_cups_before_meat()
    {
        await using var bench = await BeginAsync("2 x 5 kg");
        var seen = new List<string>();
        while (await bench.Page.Locator("#step-done").CountAsync() > 0)
        {
            var what = await bench.Page.Locator(".now .what").EvaluateAsync<string>("e => e.firstChild.textContent");
            var amount = bench.Page.Locator(".now .amount");
            seen.Add(await amount.CountAsync() > 0 ? $"{what} {await amount.InnerTextAsync()}".Replace('\u00a0', ' ') : what);
            await StepAsync(bench);
        }

        Assert.Equal(["Salt 92 g", "Black pepper 139 g", "Mix it well 231 g", "Cup 1 110 g", "Cup 2 110 g", "Now the meat: Two and three"], seen);
        await Expect(bench.Page.Locator(".left")).ToHaveTextAsync("11 g of Two and three is left in the bowl.");
        await bench.ClickAsync("Done");
        await Expect(bench.Page.Locator("#unfinished")).ToBeEmptyAsync();
    }

    // 60 g/kg of 2 kg are 120 g each time.
    [RequiresChromiumFact]
    public async Task What_goes_on_several_times_says_so_wherever_it_is_weighed_or_printed()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync("lockside-lock-gate-mop", "pork-leg", "2 kg");
        await bench.Page.Locator("#how-0").ClickAsync();
        await bench.Page.Locator("#applications-0").FillAsync("2.5");
        await Expect(bench.Page.Locator("#applications-0-fault")).ToContainTextAsync("2.5");
        await bench.Page.Locator("#applications-0").FillAsync("3");
        await bench.Page.Locator("#stage-0").SelectOptionAsync("during");
        await Expect(bench.Page.Locator("#how-0")).ToHaveTextAsync("3 times, while it cooks");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("360\u00a0g");
        await bench.GoAsync("paper");
        await Expect(bench.Page.Locator(".page header")).ToContainTextAsync("Mop while it cooks, 60\u00a0g/kg of green weight. For 3 applications together.");
        await bench.GoAsync("bench");
        await bench.Page.Locator("#weigh-out").ClickAsync();
        while (!(await bench.Page.Locator(".now").InnerTextAsync()).Contains("Cup 1", StringComparison.Ordinal))
        {
            await StepAsync(bench);
        }

        await Expect(bench.Page.Locator(".now")).ToContainTextAsync("to go on in 3 goes of about 120\u00a0g");
        await StepAsync(bench);
        await Expect(bench.Page.Locator(".now")).ToContainTextAsync("a part of it in each of 3 goes");
    }

    [RequiresChromiumFact]
    public async Task A_reload_in_the_middle_comes_back_to_the_same_step()
    {
        await using var bench = await BeginAsync("2 x 5 kg");
        await StepAsync(bench);
        await StepAsync(bench);
        await Expect(bench.Page.Locator(".where")).ToContainTextAsync("Two and three, 3 of 6");
        await bench.ReloadAsync();

        await Expect(bench.Page.Locator(".what")).ToContainTextAsync("Mix it well");
        await Expect(bench.Page.Locator(".where")).ToContainTextAsync("3 of 6");
    }

    [RequiresChromiumFact]
    public async Task A_page_that_died_offers_to_go_on_with_what_was_done()
    {
        await using var bench = await BeginAsync("2 x 5 kg");
        await StepAsync(bench);
        await StepAsync(bench);
        await Expect(bench.Page.Locator(".where")).ToContainTextAsync("3 of 6");
        await bench.Page.CloseAsync();
        var page = await bench.OpenTabAsync();

        await Expect(page.Locator("#unfinished")).ToContainTextAsync("Two and three: 2 of 6 steps are done, the last Black pepper 139 g");
        await page.GetByText("Go on weighing").ClickAsync();
        await Expect(page.Locator(".what")).ToContainTextAsync("Mix it well");
    }

    [RequiresChromiumFact]
    public async Task A_step_can_be_taken_back_and_skipped_and_the_end_says_so()
    {
        await using var bench = await BeginAsync("2 x 5 kg");
        await StepAsync(bench);
        await bench.ClickAsync("One back");
        await Expect(bench.Page.Locator(".what")).ToContainTextAsync("Salt");
        await Expect(bench.Page.Locator(".now .flag")).ToHaveTextAsync("Done before. Tap again to go on.");
        for (var i = 0; i < 4; i++)
        {
            await StepAsync(bench);
        }

        await Expect(bench.Page.Locator(".what")).ToContainTextAsync("Cup 2");
        await bench.Page.GetByRole(AriaRole.Button, new PageGetByRoleOptions { Name = "Skip" }).ClickAsync();
        await Expect(bench.Page.Locator(".cups")).ToContainTextAsync("Cup 2 not filled");
        await StepAsync(bench);

        await Expect(bench.Page.Locator(".left")).ToHaveTextAsync("121 g of Two and three is left in the bowl.");
        await Expect(bench.Page.Locator(".now")).ToContainTextAsync("Skipped: 1");
    }

    [RequiresChromiumFact]
    public async Task A_sheet_changed_meanwhile_is_said_and_both_can_be_gone_on_with()
    {
        await using var bench = await BeginAsync("2 x 5 kg");
        await StepAsync(bench);
        await Expect(bench.Page.Locator(".where")).ToContainTextAsync("2 of 6");
        await bench.ClickAsync("Leave, keep my place");
        await bench.Page.Locator("#pile-0").FillAsync("3 x 5 kg");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("330 g");
        await bench.ClickAsync("Go on weighing");
        await Expect(bench.Page.Locator(".stage h2")).ToHaveTextAsync("The sheet has changed since this was begun");
        await bench.ClickAsync("Go on with the sheet it was begun from");
        await Expect(bench.Page.Locator(".amount")).ToHaveTextAsync("139 g");

        await bench.ClickAsync("Leave, keep my place");
        await bench.Page.Locator("#pile-0").FillAsync("4 x 5 kg");
        await Expect(bench.Page.Locator("#on-meat-0")).ToHaveTextAsync("440 g");
        await bench.ClickAsync("Go on weighing");
        await bench.ClickAsync("Begin again from the sheet as it is now");
        await Expect(bench.Page.Locator(".where")).ToContainTextAsync("1 of 8");
        await bench.ClickAsync("Leave, keep my place");
        await Expect(bench.Page.Locator(".offer")).ToHaveCountAsync(2);
    }

    [RequiresChromiumTheory]
    [InlineData(0)]
    [InlineData(60)]
    public async Task A_double_tap_is_one_step(int between)
    {
        await using var bench = await BeginAsync("2 x 5 kg");
        var at = (await bench.Page.Locator("#step-done").BoundingBoxAsync())!;
        await bench.Page.Mouse.DblClickAsync(at.X + 50, at.Y + 50, new MouseDblClickOptions { Delay = between });
        await Expect(bench.Page.Locator(".where")).ToContainTextAsync("2 of 6");
        await Expect(bench.Page.Locator(".settling")).ToHaveCountAsync(0);
        await Expect(bench.Page.Locator(".where")).ToContainTextAsync("2 of 6");
        await bench.Page.Mouse.ClickAsync(at.X + 50, at.Y + 50);

        await Expect(bench.Page.Locator(".where")).ToContainTextAsync("3 of 6");
    }

    [RequiresChromiumFact]
    public async Task A_plan_asks_for_the_trimmed_weights_first()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "2 x 5 kg", trimLoss: "");
        await bench.Page.Locator("#weigh-out").ClickAsync();
        await Expect(bench.Page.Locator(".what")).ToContainTextAsync("Trim the meat and weigh it");
        await Expect(bench.Page.Locator(".what")).ToContainTextAsync("write the trimmed weights on the bench");
        await bench.ClickAsync("Go on with the plan");

        await Expect(bench.Page.Locator(".what")).ToContainTextAsync("Salt");
    }

    [RequiresChromiumFact]
    public async Task The_whole_step_fits_a_small_phone_and_its_target_a_knuckle()
    {
        await using var bench = await BeginAsync("2 x 5 kg", 360);
        await bench.Page.SetViewportSizeAsync(360, 640);
        var target = (await bench.Page.Locator("#step-done").BoundingBoxAsync())!;

        Assert.True(target is { Width: > 300, Height: >= 140 }, $"{target.Width} x {target.Height}");
        Assert.True(target.Y + target.Height <= 640, "The target is below the screen.");
        var size = await bench.Page.Locator(".amount").EvaluateAsync<double>("e => parseFloat(getComputedStyle(e).fontSize)");
        Assert.True(size >= 72, $"The amount is {size} pixels high.");
        await Expect(bench.Page.Locator("#step-aloud")).ToHaveTextAsync("Salt, Table, granulated: 92 g.");
        await StepAsync(bench);
        await Expect(bench.Page.Locator("#step-aloud")).ToHaveTextAsync("Black pepper, Ground: 139 g. Scale then shows 231 g.");
    }

    [RequiresChromiumFact]
    public async Task A_mix_larger_than_the_bowl_is_weighed_bowl_by_bowl()
    {
        await using var bench = await Bench.OpenAsync(published.Browser, published.Server.Address);
        await bench.Page.EvaluateAsync("() => localStorage.setItem('rublab.settings', JSON.stringify({ bowl: '120 g' }))");
        await bench.ReloadAsync();
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", "2 x 5 kg");
        await Expect(bench.Page.Locator(".weighing .flag")).ToHaveTextAsync("In 2 bowls: 115 g, 116 g. The weigh-out goes bowl by bowl.");
        await bench.Page.Locator("#weigh-out").ClickAsync();

        await Expect(bench.Page.Locator(".where")).ToContainTextAsync("1 of 9");
        await Expect(bench.Page.Locator(".next")).ToContainTextAsync("Black pepper 69 g");
    }

    private async Task<Bench> BeginAsync(string pile, int width = 1280)
    {
        var bench = await Bench.OpenAsync(published.Browser, published.Server.Address, width);
        await bench.EnterAsync(published.ExampleFormula, "pork-shoulder", pile);
        await bench.Page.Locator("#weigh-out").ClickAsync();
        await Expect(bench.Page.Locator(".what")).ToContainTextAsync("Salt");
        return bench;
    }

    private static async Task StepAsync(Bench bench)
    {
        var before = await bench.Page.Locator("#step-aloud").InnerTextAsync();
        await bench.Page.Locator("#step-done").ClickAsync();
        await Expect(bench.Page.Locator("#step-aloud")).Not.ToHaveTextAsync(before);
    }
}
