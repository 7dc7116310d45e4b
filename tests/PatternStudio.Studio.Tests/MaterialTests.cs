using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Tests;

public sealed class MaterialTests
{
    [Fact]
    public async Task A_swatch_comes_back_as_measured_to_the_last_digit()
    {
        SwatchDetails odd = new(18.5, 21, 0.07, 10.16, 7.3, 3.25, null, "A strip.", new DateOnly(2026, 1, 2));
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);

        Guid id = (await studio.Swatches.AddAsync(caller, design, odd)).Value;

        Assert.Equal([new KeptSwatch(id, odd, true)], await studio.Swatches.ListAsync(caller, design));
    }

    [Fact]
    public async Task The_first_swatch_calibrates_the_design_and_a_later_one_only_when_chosen()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        Guid first = (await studio.Swatches.AddAsync(caller, design, Texts.Swatch)).Value;
        SwatchDetails tighter = Texts.Swatch with { Stitches = 25 };
        Guid second = (await studio.Swatches.AddAsync(caller, design, tighter)).Value;
        Assert.Equal(first, (await studio.Desk.OpenAsync(caller, design))!.SwatchId);

        Assert.True((await studio.Swatches.ChooseAsync(caller, design, second)).Succeeded);

        OpenDesign open = (await studio.Desk.OpenAsync(caller, design))!;
        Assert.Equal((second, tighter), (open.SwatchId, open.Swatch));
        DesignMaterials both = new([new(tighter, null), new(Texts.Swatch, null)], null);
        Assert.Equivalent(DesignResults.Reckon(Texts.Cloth, both).Results, open.Results, strict: true);
    }

    [Fact]
    public async Task Changing_the_swatch_that_calibrates_computes_anew_and_removing_it_leaves_none()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        Guid swatch = (await studio.Swatches.AddAsync(caller, design, Texts.Swatch)).Value;
        SwatchDetails corrected = Texts.Swatch with { WidthCm = 14 };

        Assert.True((await studio.Swatches.ChangeAsync(caller, swatch, corrected)).Succeeded);
        Assert.Equivalent(DesignResults.Compute(Texts.Cloth, corrected), (await studio.Desk.OpenAsync(caller, design))!.Results, strict: true);

        Assert.True((await studio.Swatches.RemoveAsync(caller, swatch)).Succeeded);
        OpenDesign bare = (await studio.Desk.OpenAsync(caller, design))!;
        Assert.Null(bare.SwatchId);
        Assert.Equivalent(DesignResults.Compute(Texts.Cloth), bare.Results, strict: true);
        Assert.Empty(await studio.Swatches.ListAsync(caller, design));
    }

    [Fact]
    public async Task A_swatch_of_some_rows_in_repeats_before_and_after_blocking_comes_back_as_noted()
    {
        SwatchDetails odd = Texts.Swatch with
        {
            Counted = Counting.Repeats,
            StitchesEach = 6,
            FromRow = 2,
            ToRow = 5,
            Pattern = "border",
            WidthBeforeCm = 11.3,
            HeightBeforeCm = 10.9,
            Minutes = 42,
        };
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);

        await studio.Swatches.AddAsync(caller, design, odd);

        Assert.Equal(odd, Assert.Single(await studio.Swatches.ListAsync(caller, design)).Details);
        Assert.Equal("Wrack Line Cloth", Assert.Single(await studio.Swatches.ListAllAsync(caller)).Title);
    }

    [Fact]
    public void A_timed_swatch_tells_how_long_the_design_takes()
    {
        // 20 × 24 stitches in 48 minutes are 10 a minute; the cloth has 21 chains and 2 rows of 20.
        SizeResults timed = DesignResults.Compute(Texts.Cloth, Texts.Swatch with { Minutes = 48 }).Sizes[0];

        Assert.InRange(timed.Minutes!.Value, 4, 7);
        Assert.Equal(timed.Minutes.Value, timed.Schedule[^1].MinutesSoFar!.Value, 6);
        Assert.Null(DesignResults.Compute(Texts.Cloth, Texts.Swatch).Sizes[0].Minutes);
    }

    [Fact]
    public void Before_anything_is_written_nothing_is_found_fault_with() => Assert.Empty(DesignResults.Compute(" \n").Findings);

    [Fact]
    public async Task A_swatch_of_another_design_does_not_calibrate()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid swatch = (await studio.Swatches.AddAsync(caller, await studio.NewDesignAsync(caller), Texts.Swatch)).Value;

        Outcome refused = await studio.Swatches.ChooseAsync(caller, await studio.NewDesignAsync(caller), swatch);

        Assert.Equal("This swatch belongs to another design. Choose one of this design, or measure a new one.", refused.ToString());
    }

    public static TheoryData<SwatchDetails, string, string> WrongSwatches => new()
    {
        { Texts.Swatch with { Stitches = 0 }, "Stitches", "Stitches must be more than 0 and at most 10,000. Measure again, and mind the unit." },
        { Texts.Swatch with { Rows = double.NaN }, "Rows", "Rows must be more than 0 and at most 10,000. Measure again, and mind the unit." },
        { Texts.Swatch with { WidthCm = 1_200 }, "WidthCm", "The width must be more than 0 cm and at most 1,000 cm. Measure again, and mind the unit." },
        { Texts.Swatch with { HeightCm = -1 }, "HeightCm", "The height must be more than 0 cm and at most 1,000 cm. Measure again, and mind the unit." },
        { Texts.Swatch with { WeightGrams = 0 }, "WeightGrams", "The weight must be more than 0 g and at most 10,000 g. Measure again, and mind the unit." },
        { Texts.Swatch with { HookMm = 60 }, "HookMm", "The hook size must be more than 0.3 mm and at most 50 mm. Measure again, and mind the unit." },
    };

    [Theory]
    [MemberData(nameof(WrongSwatches), DisableDiscoveryEnumeration = true)]
    public async Task A_number_that_no_swatch_has_is_refused_at_its_field(SwatchDetails wrong, string field, string message)
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);

        Outcome<Guid> refused = await studio.Swatches.AddAsync(caller, design, wrong);

        Assert.Equal([new FieldMessage(field, message)], refused.Messages);
    }

    [Fact]
    public async Task A_yarn_is_added_changed_chosen_and_its_designs_are_computed_anew()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid design = await studio.NewDesignAsync(caller);
        await studio.Swatches.AddAsync(caller, design, Texts.Swatch);
        Guid yarn = (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value;

        Assert.True((await studio.Yarns.ChooseAsync(caller, design, yarn)).Succeeded);
        Assert.Equal([new KeptYarn(yarn, Texts.Yarn, 1)], await studio.Yarns.ListAsync(caller));
        YarnDetails corrected = Texts.Yarn with { MetresPerBall = 170, GramsPerBall = 100 };
        Assert.True((await studio.Yarns.ChangeAsync(caller, yarn, corrected)).Succeeded);

        OpenDesign open = (await studio.Desk.OpenAsync(caller, design))!;
        Assert.Equal((yarn, corrected), (open.YarnId, open.Yarn));
        Assert.Equivalent(DesignResults.Compute(Texts.Cloth, Texts.Swatch, corrected), open.Results, strict: true);
    }

    [Fact]
    public async Task A_yarn_in_use_stays_and_the_refusal_names_where()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();
        Guid yarn = (await studio.Yarns.AddAsync(caller, Texts.Yarn)).Value;
        Guid made = await studio.NewDesignAsync(caller, "Made of It");
        Guid swatched = await studio.NewDesignAsync(caller, "Swatched in It");
        await studio.Yarns.ChooseAsync(caller, made, yarn);
        Guid swatch = (await studio.Swatches.AddAsync(caller, swatched, Texts.Swatch with { YarnId = yarn })).Value;

        Outcome refused = await studio.Yarns.RemoveAsync(caller, yarn);
        Assert.Equal(
            "This yarn is used by Made of It, Swatched in It. Choose another yarn there and in its swatches, then remove this one.",
            refused.ToString());

        await studio.Yarns.ChooseAsync(caller, made, null);
        await studio.Swatches.RemoveAsync(caller, swatch);
        Assert.True((await studio.Yarns.RemoveAsync(caller, yarn)).Succeeded);
        Assert.Empty(await studio.Yarns.ListAsync(caller));
    }

    [Fact]
    public async Task A_label_that_can_not_be_is_refused_field_by_field()
    {
        await using TestStudio studio = await TestStudio.OpenAsync();
        Caller caller = await studio.NewCallerAsync();

        Outcome<Guid> refused = await studio.Yarns.AddAsync(caller, new("", "", 8, 0, -1, "", "teal"));

        Assert.Equal(
            ["Name", "MetresPerBall", "GramsPerBall", "WeightClass", "ColourHex"],
            refused.Messages.Select(message => message.Field));
    }
}
