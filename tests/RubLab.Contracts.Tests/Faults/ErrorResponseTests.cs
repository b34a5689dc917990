using System.Text.Json;
using RubLab.Contracts.Faults;
using RubLab.Contracts.Json;
using RubLab.Core.Faults;

namespace RubLab.Contracts.Tests.Faults;

public class ErrorResponseTests
{
    [Fact]
    public void A_problem_is_written_with_every_broken_rule_and_its_parameters()
    {
        var problem = new Problem
        {
            Type = "/problems/invalid",
            Title = "Broken rules",
            Status = 422,
            Errors = ErrorResponse.From(Document.FirstSheet().Edit("""/overage/value = -1 & /pieces = "some" """).Sheet().Log),
        };
        Assert.Equal(
            """{"type":"/problems/invalid","title":"Broken rules","status":422,"errors":["""
            + """{"pointer":"/overage/value","code":"out-of-range","detail":"-1 % is out of range: from 0 up to 100 %.","parameters":{"value":-1,"lowest":0,"highest":100,"unit":"%"}},"""
            + """{"pointer":"/pieces","code":"unknown-word","detail":"\u0027some\u0027 is not one of all, none.","parameters":{"value":"some","allowed":["all","none"]}}]}""",
            JsonSerializer.Serialize(problem, RubLabJson.Default.Problem));
    }

    [Fact]
    public void A_place_is_pointed_at_by_RFC_6901()
    {
        var log = new FaultLog();
        Assert.Equal("", log.Root.Pointer);
        Assert.Equal("/a~1b/0/m~0n/~01/", log.Root.At("a/b").At(0).At("m~n").At("~1").At("").Pointer);
        log.Root.At("pile").At(12).Fault("code", "detail");
        Assert.Equal("/pile/12", Assert.Single(log.Faults).Pointer);
    }

    [Fact]
    public void Places_beside_each_other_do_not_disturb_one_another()
    {
        var parent = new FaultLog().Root.At("pile");
        var first = parent.At(0);
        var second = parent.At(1).At("cut");
        Assert.Equal(["/pile", "/pile/0", "/pile/1/cut"], [parent.Pointer, first.Pointer, second.Pointer]);
    }

    [Fact]
    public void A_long_value_is_cut_short_in_the_message_but_never_through_a_pair()
    {
        var fault = Assert.Single(Document.FirstSheet().Set("/pile/0/cut", new string('x', 79) + "\ud83c\udf56" + new string('y', 10_000)).Sheet().Log.Faults);
        Assert.Equal(new string('x', 79) + "...", fault.Parameters["value"]);
    }
}
