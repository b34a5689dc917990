using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace RubLab.Client.Tests;

public sealed class WireTests(Kitchen kitchen) : IClassFixture<Kitchen>
{
    [Theory]
    [InlineData("a/b")]
    [InlineData("../units")]
    [InlineData("salt?x=1#y")]
    [InlineData("100 % salt")]
    [InlineData("...")]
    [InlineData("сіль")]
    public async Task An_id_stays_one_segment_whatever_it_holds(string id) =>
        await Refused.WithAsync(HttpStatusCode.NotFound, () => kitchen.Client.Ingredients.GetAsync(id));

    [Theory]
    [InlineData("")]
    [InlineData(".")]
    [InlineData("..")]
    public async Task An_id_no_path_can_hold_is_not_sent(string id) =>
        await Assert.ThrowsAsync<ArgumentException>(() => kitchen.Client.Ingredients.GetAsync(id));

    [Fact]
    public async Task A_key_in_the_default_headers_is_sent_and_a_wrong_one_refused()
    {
        using var keyed = new KeyedKitchen();
        using var http = keyed.CreateClient();
        http.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", KeyedKitchen.TheKey);
        Assert.NotEmpty(await new RubLabClient(http).Units.ListAsync());
        http.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue("Bearer", "another");
        await Refused.WithAsync(HttpStatusCode.Unauthorized, () => new RubLabClient(http).Units.ListAsync());
    }

    [Fact]
    public async Task What_is_cancelled_is_not_answered()
    {
        using var cancelled = new CancellationTokenSource();
        await cancelled.CancelAsync();
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => kitchen.Client.Units.ListAsync(cancelled.Token));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => kitchen.Client.BatchSheets.ComputeAsync(Requests.Shoulders(), cancelled.Token));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => kitchen.Client.Cuts.ListAsync(cancellation: cancelled.Token).ToListAsync().AsTask());
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => kitchen.Client.Cuts.ListAsync().ToListAsync(cancelled.Token).AsTask());
    }

    [Fact]
    public async Task Members_added_by_a_newer_server_are_passed_over()
    {
        using var http = Answering(HttpStatusCode.OK, "application/json", """{"status":"ok","dataVersion":"2031.2","moon":{"phase":"full"}}""");
        Assert.Equal("2031.2", (await new RubLabClient(http).Health.GetAsync()).DataVersion);
    }

    [Theory]
    [InlineData("text/html", "<h1>Bad gateway</h1>")]
    [InlineData("application/problem+json", "<h1>Bad gateway</h1>")]
    [InlineData("application/problem+json", "{}")]
    public async Task An_answer_in_the_servers_place_is_a_problem_of_its_status(string mediaType, string body)
    {
        using var http = Answering(HttpStatusCode.BadGateway, mediaType, body);
        var refused = await Assert.ThrowsAsync<RubLabProblemException>(() => new RubLabClient(http).Health.GetAsync());
        Assert.Equal((HttpStatusCode.BadGateway, "Bad Gateway"), (refused.Status, refused.Problem.Title));
        Assert.Empty(refused.Errors);
    }

    [Fact]
    public async Task An_answer_that_is_not_the_JSON_it_should_be_is_told_apart_from_a_refusal()
    {
        using var http = Answering(HttpStatusCode.OK, "application/json", "null");
        await Assert.ThrowsAsync<JsonException>(() => new RubLabClient(http).Health.GetAsync());
    }

    [Fact]
    public async Task A_base_address_with_a_path_is_kept()
    {
        using var http = new HttpClient(new Canned(request => Answer(
            HttpStatusCode.OK, "application/json", $$"""{"status":"{{request.RequestUri!.AbsolutePath}}","dataVersion":"1"}""")))
        {
            BaseAddress = new Uri("http://127.0.0.1/kitchen/"),
        };
        Assert.Equal("/kitchen/health", (await new RubLabClient(http).Health.GetAsync()).Status);
    }

    [Fact]
    public void A_client_without_a_base_address_is_not_made()
    {
        using var http = new HttpClient();
        Assert.Throws<ArgumentException>(() => new RubLabClient(http));
    }

    [Fact]
    public void The_client_references_the_contracts_alone() => Assert.Equal(
        ["RubLab.Contracts"],
        typeof(RubLabClient).Assembly.GetReferencedAssemblies().Select(a => a.Name).Where(n => !n!.StartsWith("System.", StringComparison.Ordinal)));

    private static HttpClient Answering(HttpStatusCode status, string mediaType, string body) =>
        new(new Canned(_ => Answer(status, mediaType, body))) { BaseAddress = new Uri("http://127.0.0.1/") };

    private static HttpResponseMessage Answer(HttpStatusCode status, string mediaType, string body) =>
        new(status) { Content = new StringContent(body, Encoding.UTF8, mediaType) };

    private sealed class Canned(Func<HttpRequestMessage, HttpResponseMessage> answer) : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(answer(request));
    }
}
