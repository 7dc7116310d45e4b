using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Metadata.Builders;
using PatternStudio.Studio.Designs;
using PatternStudio.Studio.Materials;

namespace PatternStudio.Studio.Data.Configuration;

internal sealed class ColourYarnConfiguration : IEntityTypeConfiguration<ColourYarn>
{
    public void Configure(EntityTypeBuilder<ColourYarn> colour)
    {
        colour.ToTable("ColourYarns");
        colour.HasKey(it => new { it.DesignId, it.Colour });
        colour.Property(it => it.Colour).HasMaxLength(ColourYarn.ColourLength);
        colour.HasOne<Design>().WithMany().HasForeignKey(it => it.DesignId).OnDelete(DeleteBehavior.Cascade);
        colour.HasOne<Yarn>().WithMany().HasForeignKey(it => it.YarnId).OnDelete(DeleteBehavior.Restrict);
    }
}
