using System.Net;
using RubLab.Contracts.Formulas;
using RubLab.Contracts.Ingredients;
using RubLab.Contracts.Quantities;

namespace RubLab.Client.Tests;

public class DensityTests
{
    [Fact]
    public async Task A_form_is_weighed_listed_weighed_again_and_given_up()
    {
        using var kitchen = new Kitchen();
        var densities = kitchen.Client.Densities;
        var put = await densities.PutAsync("salt", "flake-dense", Filling(57));
        Assert.Equal("kitchen", put.Value.Density.Origin);
        Assert.Equal(put.ETag, (await densities.GetAsync("salt", "flake-dense")).ETag);
        Assert.Equal(["salt"], (await densities.ListAsync().ToListAsync()).Select(d => d.Ingredient));

        await Refused.WithAsync(HttpStatusCode.PreconditionRequired, () => densities.PutAsync("salt", "flake-dense", Filling(58)));
        var again = await densities.PutAsync("salt", "flake-dense", Filling(58), put.ETag);
        Assert.Equal(2, again.Value.Revision);
        await Refused.WithAsync(HttpStatusCode.PreconditionFailed, () => densities.DeleteAsync("salt", "flake-dense", put.ETag));
        await densities.DeleteAsync("salt", "flake-dense", again.ETag);
        await Refused.WithAsync(HttpStatusCode.NotFound, () => densities.GetAsync("salt", "flake-dense"));
        await Refused.WithAsync(HttpStatusCode.UnprocessableEntity, () => densities.PutAsync("salt", "flake-dense", Filling(900)));
    }

    [Fact]
    public async Task A_line_is_changed_and_the_salt_held()
    {
        using var kitchen = new Kitchen();
        var change = await kitchen.Client.Formulas.ChangeAsync(new FormulaChangeRequest { FormulaId = "lockside-pork-rub", Line = 2, Amount = 8 });
        Assert.Equal(change.Before.SaltRatio.Typical, change.After.SaltRatio.Typical);
        Assert.True(change.After.TotalRatio.Value > change.Before.TotalRatio.Value);
        await Refused.WithAsync(
            HttpStatusCode.UnprocessableEntity,
            () => kitchen.Client.Formulas.ChangeAsync(new FormulaChangeRequest { FormulaId = "lockside-pork-rub", Line = 99, Amount = 8 }));
    }

    private static OwnDensityRequest Filling(double grams) => new()
    {
        Weighings = [new WeighingRequest { Volume = QuantityRequest.Of(0.25, "cup"), Weight = QuantityRequest.Of(grams, "g") }],
    };
}
