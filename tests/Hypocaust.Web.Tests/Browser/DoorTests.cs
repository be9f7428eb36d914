using System.Net;

namespace Hypocaust.Web.Tests.Browser;

/// <summary>Who is let in, and what the browser is told to refuse.</summary>
public sealed class DoorTests(QuietApp quiet) : IClassFixture<QuietApp>, IDisposable
{
    private readonly HttpClient client = new();

    public void Dispose() => client.Dispose();

    [Theory]
    [InlineData("Host", "evil.example", HttpStatusCode.BadRequest)]
    [InlineData("Origin", "http://evil.example", HttpStatusCode.Forbidden)]
    [InlineData("Accept", "text/html", HttpStatusCode.OK)]
    public async Task Only_this_machine_by_its_own_name_is_let_in(
        string header,
        string value,
        HttpStatusCode expected
    )
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, quiet.App.Address + "/space");
        request.Headers.TryAddWithoutValidation(header, value);

        using var response = await client.SendAsync(request, TestContext.Current.CancellationToken);

        response.StatusCode.ShouldBe(expected);
    }

    [Fact]
    public async Task Every_answer_tells_the_browser_to_load_nothing_from_elsewhere()
    {
        using var response = await client.GetAsync(
            quiet.App.Address + "/plant",
            TestContext.Current.CancellationToken
        );

        var policy = response.Headers.GetValues("Content-Security-Policy").ShouldHaveSingleItem();
        policy.ShouldContain("default-src 'none'");
        policy.ShouldContain("frame-ancestors 'none'");
        policy.ShouldNotContain("unsafe");
        response.Headers.GetValues("X-Content-Type-Options").ShouldBe(["nosniff"]);
    }

    [Fact]
    public void It_listens_on_this_machine_alone()
    {
        new Uri(quiet.App.Address).Host.ShouldBe("127.0.0.1");
    }
}
