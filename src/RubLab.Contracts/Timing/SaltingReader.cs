using RubLab.Contracts.Reading;
using RubLab.Core.Catalogues;
using RubLab.Core.Faults;
using RubLab.Core.Meat;
using RubLab.Core.Quantities;
using RubLab.Core.Remarks;
using RubLab.Core.Timing;

namespace RubLab.Contracts.Timing;

/// <summary>A question on salting as read.</summary>
internal sealed record SaltingReader
{
    private const double MinutesPerHour = 60;

    public required Cut? Cut { get; init; }

    public required string? Species { get; init; }

    public required SaltingPieceReader Piece { get; init; }

    public required SaltingRequest Request { get; init; }

    public static SaltingReader? Read(SaltingTimesRequest request, Catalogue catalogue, Place at)
    {
        var before = at.Log.Count;
        var limits = catalogue.Salting.Limits;
        var method = Vocabulary.SaltingMethods.Read(request.Method, at.At("method"));
        if (request.Method is null)
        {
            Reader.Missing(at.At("method"));
        }

        var cut = request.Cut is null ? null : Lookup.Cut(request.Cut, catalogue, at.At("cut"));
        var diffusivity = ReadDiffusivity(request, cut, catalogue, out var species, at);
        var piece = SaltingPieceReader.Read(request, cut, catalogue, at);
        var stages = ReadStages(request.Stages, limits, at.At("stages"));
        var ratio = ReadRatio(request.LiquidRatio, method, limits, at.At("liquidRatio"));
        if (at.Log.Count > before || method is null || piece is null || diffusivity is null || stages is null)
        {
            return null;
        }

        return new SaltingReader
        {
            Cut = cut,
            Species = species,
            Piece = piece,
            Request = new SaltingRequest
            {
                Method = method.Value,
                Body = piece.Body,
                Stages = stages,
                Diffusivity = diffusivity,
                WaterRatio = ratio,
            },
        };
    }

    private static AssumedDiffusivity? ReadDiffusivity(SaltingTimesRequest request, Cut? cut, Catalogue catalogue, out string? species, Place at)
    {
        var limits = catalogue.Salting.Limits;
        species = request.Species is { } named ? Lookup.SaltedSpecies(named, catalogue, at.At("species")) : cut?.Species;
        if (species is not null && cut is not null && species != cut.Species)
        {
            at.At("species").Fault("one-or-the-other", $"{cut.Name} is {cut.Species}: leave out either the species or the cut.");
        }

        var given = Reader.Amount(
            request.Diffusivity, at.At("diffusivity"), SaltingBounds.SquareMetresPerSecond(limits), isRequired: false, Dimension.Diffusivity);
        var celsius = Reader.Amount(request.DiffusivityAt, at.At("diffusivityAt"), SaltingBounds.Celsius(limits), isRequired: false, Dimension.Temperature);
        if (request is { DiffusivityAt: not null, Diffusivity: null })
        {
            at.At("diffusivityAt").Fault("needs-other", "diffusivityAt says where diffusivity holds; give diffusivity too.");
        }

        if (request.Diffusivity is not null)
        {
            return given is { } value ? AssumedDiffusivity.Given(Band.Exact(value), celsius) : null;
        }

        if (request.Species is null && request.Cut is null)
        {
            Reader.Missing(at.At("species"));
        }

        if (species is null)
        {
            return null;
        }

        if (catalogue.Salting.TryFindDiffusivity(species, out var row))
        {
            return AssumedDiffusivity.Of(row);
        }

        at.At("diffusivity").Fault("required", $"How fast salt travels in {species} is not on record: give diffusivity.");
        return null;
    }

    private static List<SaltingStage>? ReadStages(IReadOnlyList<SaltingStageRequest?>? stages, SaltingLimits limits, Place at)
    {
        if (!Listed.Holds(stages, SaltingTimesRequest.MostStages, "stage", "stages", at))
        {
            return null;
        }

        var before = at.Log.Count;
        var read = new List<SaltingStage>(stages.Count);
        for (var i = 0; i < stages.Count; i++)
        {
            if (stages[i] is not { } stage)
            {
                Reader.Missing(at.At(i));
                continue;
            }

            var celsius = Reader.Amount(stage.Temperature, at.At(i).At("temperature"), SaltingBounds.Celsius(limits), isRequired: true, Dimension.Temperature);
            var minutes = Reader.Amount(stage.Time, at.At(i).At("time"), SaltingBounds.Minutes(limits), isRequired: true, Dimension.Time);
            if (celsius is { } c && minutes is { } m)
            {
                read.Add(new SaltingStage(c, m / MinutesPerHour));
            }
        }

        if (at.Log.Count > before)
        {
            return null;
        }

        var hours = read.Sum(stage => stage.Hours);
        if (hours < limits.LowestHours || hours > limits.HighestHours)
        {
            at.Fault(
                "out-of-range", $"All stages together are {Figures.Read(hours, hours < limits.LowestHours ? limits.LowestHours : limits.HighestHours)} h: from {Figures.Exact(limits.LowestHours)} up to {Figures.Exact(limits.HighestHours)} h.",
                ("value", hours), ("lowest", limits.LowestHours), ("highest", limits.HighestHours), ("unit", "h"));
            return null;
        }

        return read;
    }

    private static double? ReadRatio(double? ratio, SaltingMethod? method, SaltingLimits limits, Place at)
    {
        if (ratio is { } given)
        {
            if (method is { } known && known != SaltingMethod.Soak)
            {
                var word = Vocabulary.SaltingMethods[known];
                at.Fault("not-for-method", $"A {word} has no liquid that weakens: liquidRatio is for a soak.", ("method", word));
            }

            return Reader.Within(given, SaltingBounds.WaterRatio(limits), at);
        }

        if (method == SaltingMethod.Soak)
        {
            at.Fault("required", "A soak needs it: water of the liquid over water of the meat.");
        }

        return null;
    }
}
