namespace RubLab.Client;

/// <summary>
/// The RubLab API, one member for each group of resources. A key, where one is needed, is the client's
/// <c>Authorization: Bearer</c> default header; <c>docs/api/client.md</c> shows it at work.
/// </summary>
/// <remarks>
/// Safe for concurrent use, as its <see cref="HttpClient"/> is, which it does not dispose. Every method throws
/// <see cref="RubLabProblemException"/> when the server refuses and <see cref="HttpRequestException"/> when it cannot be reached.
/// </remarks>
public sealed class RubLabClient
{
    /// <param name="http">Its base address is the server's, such as <c>http://127.0.0.1:5187/</c>; a path in it ends in a slash.</param>
    /// <exception cref="ArgumentException">The base address is missing.</exception>
    public RubLabClient(HttpClient http)
    {
        ArgumentNullException.ThrowIfNull(http);
        if (http.BaseAddress is null)
        {
            throw new ArgumentException("The HttpClient needs a BaseAddress: where the server is.", nameof(http));
        }

        var wire = new Wire(http);
        Units = new UnitsClient(wire);
        Sources = new SourcesClient(wire);
        Ingredients = new IngredientsClient(wire);
        Cuts = new CutsClient(wire);
        Conversions = new ConversionsClient(wire);
        Densities = new DensitiesClient(wire);
        Formulas = new FormulasClient(wire);
        Changes = new ChangesClient(wire);
        BatchSheets = new BatchSheetsClient(wire);
        SaltChecks = new SaltChecksClient(wire);
        Sauces = new SaucesClient(wire);
        Brines = new BrinesClient(wire);
        PairingCodes = new PairingCodesClient(wire);
        Sessions = new SessionsClient(wire);
        PurchasePlans = new PurchasePlansClient(wire);
        PortionCounts = new PortionCountsClient(wire);
        ShoppingLists = new ShoppingListsClient(wire);
        Yields = new YieldsClient(wire);
        Cures = new CuresClient(wire);
        SaltingTimes = new SaltingTimesClient(wire);
        Health = new HealthClient(wire);
    }

    public UnitsClient Units { get; }

    public SourcesClient Sources { get; }

    public IngredientsClient Ingredients { get; }

    public CutsClient Cuts { get; }

    public ConversionsClient Conversions { get; }

    public DensitiesClient Densities { get; }

    public FormulasClient Formulas { get; }

    public ChangesClient Changes { get; }

    public BatchSheetsClient BatchSheets { get; }

    public SaltChecksClient SaltChecks { get; }

    public SaucesClient Sauces { get; }

    public BrinesClient Brines { get; }

    public PairingCodesClient PairingCodes { get; }

    public SessionsClient Sessions { get; }

    public PurchasePlansClient PurchasePlans { get; }

    public PortionCountsClient PortionCounts { get; }

    public ShoppingListsClient ShoppingLists { get; }

    public YieldsClient Yields { get; }

    public CuresClient Cures { get; }

    public SaltingTimesClient SaltingTimes { get; }

    public HealthClient Health { get; }
}
